package wetside.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A real Chromium without a window, with an empty profile and no way out: every name but this computer's leads nowhere. */
final class Chromium implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome-stable");
    private static final List<String> FLAGS = List.of(
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--no-default-browser-check",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--disable-extensions",
            "--disable-dev-shm-usage",
            "--hide-scrollbars",
            "--force-color-profile=srgb",
            "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
            "--remote-debugging-port=0");

    private final Path profile;
    private final Process process;
    private final Wire wire;

    Chromium() {
        try {
            profile = Files.createTempDirectory("wetside-chromium");
            ProcessBuilder builder = new ProcessBuilder(command());
            builder.redirectErrorStream(true)
                    .redirectOutput(profile.resolve("said").toFile());
            process = builder.start();
            wire = new Wire(address());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> command() {
        return Stream.of(List.of(program().toString()), FLAGS, List.of("--user-data-dir=" + profile, "about:blank"))
                .flatMap(List::stream)
                .toList();
    }

    private static Path program() {
        String path = System.getenv().getOrDefault("PATH", "") + File.pathSeparator + "/usr/bin";
        for (String name : NAMES) {
            for (String folder : path.split(File.pathSeparator)) {
                if (Files.isExecutable(Path.of(folder, name))) {
                    return Path.of(folder, name);
                }
            }
        }
        throw new AssertionError("the browser tests need Chromium, and there is none on the PATH; ./check installs it");
    }

    /** Chromium writes where it listens into its profile. */
    private URI address() throws IOException {
        Path file = profile.resolve("DevToolsActivePort");
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (process.isAlive() && System.nanoTime() < end) {
            List<String> lines = Files.exists(file) ? Files.readAllLines(file) : List.of();
            if (lines.size() >= 2) {
                return URI.create("ws://127.0.0.1:" + lines.get(0) + lines.get(1));
            }
            Tab.pause(20);
        }
        throw new IllegalStateException("Chromium did not start: " + Files.readString(profile.resolve("said")));
    }

    /** A page of its own, with cookies of its own. */
    Tab open(URI bench, Screen screen) {
        String context = wire.ask("", "Target.createBrowserContext", Map.of("disposeOnDetach", true))
                .path("browserContextId")
                .asString("");
        String target = wire.ask(
                        "",
                        "Target.createTarget",
                        Map.of(
                                "url",
                                "about:blank",
                                "browserContextId",
                                context,
                                "width",
                                screen.width,
                                "height",
                                screen.height))
                .path("targetId")
                .asString("");
        String session = wire.ask("", "Target.attachToTarget", Map.of("targetId", target, "flatten", true))
                .path("sessionId")
                .asString("");
        return new Tab(wire, session, target, bench, screen);
    }

    @Override
    public void close() {
        try {
            wire.ask("", "Browser.close", Map.of());
            wire.close();
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly().waitFor();
            }
            try (Stream<Path> files = Files.walk(profile)) {
                files.sorted(Comparator.reverseOrder()).forEach(f -> f.toFile().delete());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
