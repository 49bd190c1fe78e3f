package wetside.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a person with a browser does to a bench, without scripts. */
final class Browser {
    private static final String BOUNDARY = "----wetside-test";

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();
    private final Bench bench;

    Browser(Bench bench) {
        this.bench = bench;
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(at(path)).build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    byte[] bytes(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(at(path)).build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    /** Sends a form: name, value, name, value ... */
    HttpResponse<String> post(String path, String... fields) throws IOException, InterruptedException {
        StringBuilder form = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            form.append(i == 0 ? "" : "&").append(fields[i]).append('=');
            form.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        HttpRequest request = HttpRequest.newBuilder(at(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form.toString()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    HttpResponse<String> upload(String path, String version, String name, byte[] content)
            throws IOException, InterruptedException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes(("--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"version\"\r\n\r\n" + version
                        + "\r\n--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"" + name
                        + "\"\r\nContent-Type: image/jpeg\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(content);
        body.writeBytes(("\r\n--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
        HttpRequest request = HttpRequest.newBuilder(at(path))
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** The version a page's forms were made on. */
    String version(String path) throws IOException, InterruptedException {
        Matcher m = Pattern.compile("name=\"version\" value=\"(\\d+)\"")
                .matcher(get(path).body());
        if (!m.find()) {
            throw new AssertionError("no form on " + path);
        }
        return m.group(1);
    }

    private URI at(String path) {
        return URI.create("http://127.0.0.1:" + bench.port() + path);
    }
}
