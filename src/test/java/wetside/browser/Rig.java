package wetside.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import wetside.bench.Bench;
import wetside.bench.Demo;
import wetside.setting.Setting;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Register;
import wetside.shop.Shop;

/** The real bench with the demo workshop and eight draws, and a Chromium before it: opened once for a class of tests. */
final class Rig implements AutoCloseable {
    /** The smallest of the demo's machines: all its causes are computed while the first pages are looked at. */
    static final String SERIAL = "L 19 0095";

    private static final String DRAWS = "wetside.bench.draws";

    final Shop shop;
    final Bench bench;
    final Chromium chromium;
    final URI home;
    /** Number of {@link #SERIAL} on the register. */
    final long machine;
    /** Its job that is not done, and one that is. */
    final long job;

    final long done;

    private final Path folder;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    private Rig() {
        try {
            folder = Files.createTempDirectory("wetside-browser");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        shop = Shop.open(folder);
        Demo.fill(shop, Clock.systemDefaultZone());
        bench = started(shop);
        home = URI.create(bench.address());
        var registered = new Register(shop).bySerial(SERIAL).orElseThrow();
        machine = registered.id();
        job = jobOf(machine, false);
        done = jobOf(machine, true);
        // the twin begins while the browser starts
        get("jobs/" + job + "/fault");
        get("machines/" + machine + "/readings");
        post(
                "machines/" + machine + "/water",
                "hardness=9&hardness-unit=" + coded("drops of 1 °dH") + "&alkalinity=8&alkalinity-unit="
                        + coded("drops of 1 °dH") + "&conductivity=390&conductivity-unit=" + coded("µS/cm")
                        + "&ph=7.6&treatment=none&title=" + coded("Tap, spring") + "&person=Ines&keep=1");
        chromium = new Chromium();
    }

    private long jobOf(long machine, boolean done) {
        return new Jobs(shop, Clock.systemDefaultZone())
                .of(machine).stream()
                        .filter(j -> done == (j.state() == JobState.DONE))
                        .findFirst()
                        .orElseThrow()
                        .number();
    }

    private static Bench started(Shop shop) {
        try (Setting few = new Setting(DRAWS, "8")) {
            return Bench.start(shop, Clock.systemDefaultZone(), 0);
        }
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    byte[] get(String path) {
        return send(HttpRequest.newBuilder(home.resolve(path)).build());
    }

    private void post(String path, String form) {
        send(HttpRequest.newBuilder(home.resolve(path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build());
    }

    private byte[] send(HttpRequest request) {
        try {
            HttpResponse<byte[]> answer = client.send(request, HttpResponse.BodyHandlers.ofByteArray());
            if (answer.statusCode() >= 400) {
                throw new IllegalStateException(request.uri() + " answers " + answer.statusCode());
            }
            return answer.body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    Tab tab(Screen screen) {
        return chromium.open(home, screen);
    }

    @Override
    public void close() {
        chromium.close();
        bench.close();
        shop.close();
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Hands a rig to a test class, and takes it down after its last test: its twins must not run on behind other tests. */
    static final class Given implements ParameterResolver {
        @Override
        public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
            return parameter.getParameter().getType() == Rig.class;
        }

        @Override
        public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
            ExtensionContext wholeClass =
                    context.getTestMethod().isPresent() ? context.getParent().orElseThrow() : context;
            return wholeClass
                    .getStore(ExtensionContext.Namespace.create(Rig.class))
                    .computeIfAbsent(Rig.class, k -> new Rig(), Rig.class);
        }
    }
}
