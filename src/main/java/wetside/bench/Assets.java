package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import wetside.page.Theme;

/** Style, scripts and fonts from the jar, under an address that changes with their content, so that they may be kept. */
final class Assets implements Routes {
    private static final List<String> OWN = List.of(
            "bench.css",
            "bench.js",
            "department.css",
            "fault.css",
            "fault.js",
            "machine.css",
            "machine.js",
            "readings.js",
            "run.css",
            "run.js",
            "water.css",
            "water.js");
    private static final String COLOURS = "colours.css";
    private static final Map<String, String> TYPES = Map.of(
            "css",
            "text/css; charset=utf-8",
            "js",
            "text/javascript; charset=utf-8",
            "woff2",
            "font/woff2",
            "svg",
            "image/svg+xml");
    private static final String VERSION = version();

    static String address() {
        return "/assets/" + VERSION;
    }

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/assets/{version}/{file}", Assets::send);
    }

    private static void send(Context context) {
        String file = context.pathParam("file");
        String ending = file.substring(file.lastIndexOf('.') + 1);
        if (!file.matches("[a-z0-9-]+\\.[a-z0-9]+") || !TYPES.containsKey(ending)) {
            throw new NotFoundResponse();
        }
        byte[] content = content(file, ending);
        if (content == null) {
            throw new NotFoundResponse();
        }
        context.header("Cache-Control", "public, max-age=31536000, immutable");
        context.contentType(TYPES.get(ending)).result(content);
    }

    private static byte[] content(String file, String ending) {
        if (file.equals(COLOURS)) {
            return Theme.declarations().getBytes(StandardCharsets.UTF_8);
        }
        return read((ending.equals("woff2") ? "/wetside/fonts/" : "/wetside/bench/") + file);
    }

    private static byte[] read(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            return in == null ? null : in.readAllBytes();
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + resource, e);
        }
    }

    private static String version() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(Theme.declarations().getBytes(StandardCharsets.UTF_8));
            OWN.forEach(f -> digest.update(read("/wetside/bench/" + f)));
            return HexFormat.of().formatHex(digest.digest(), 0, 6);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
