package wetside.bench;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;
import wetside.shop.Jobs;
import wetside.shop.Register;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shop;

/** A bench with one owner and one spring-lever machine, asked over HTTP. */
final class Opened implements AutoCloseable {
    final Shop shop;
    final Bench bench;
    final long machine;
    final HttpClient client = HttpClient.newHttpClient();

    Opened(Path folder) {
        shop = Shop.open(folder);
        Register register = new Register(shop);
        long owner = register.owner("Corner Bakery", "", "", "");
        String revision =
                MachineFile.bundled("spring-lever", Kinds.declarations()).newestRevision();
        machine = register.machine(new RegisteredMachine(
                0,
                "S 11 0417",
                "spring-lever",
                revision,
                "",
                owner,
                "tank",
                null,
                null,
                230.0,
                140.0,
                null,
                "",
                "",
                0));
        bench = Bench.start(shop, Clock.systemUTC(), 0);
    }

    long job(String complaint) {
        return new Jobs(shop, Clock.systemUTC()).open(machine, complaint, "Ines");
    }

    URI uri(String path) {
        return URI.create("http://127.0.0.1:" + bench.port() + path);
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(uri(path)).build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** @param fields names and values in turn */
    HttpResponse<String> post(String path, String... fields) throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        HttpRequest request = HttpRequest.newBuilder(uri(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    @Override
    public void close() {
        bench.close();
        shop.close();
    }
}
