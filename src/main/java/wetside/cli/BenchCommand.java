package wetside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import wetside.bench.Bench;
import wetside.bench.Demo;
import wetside.shop.Shop;
import wetside.shop.ShopTrouble;

/** Serves the workbench to the browser of this computer until it is stopped. */
@Command(
        name = "bench",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "Open the workbench in the browser: jobs, machines, fault finding, the twin live.")
final class BenchCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "folder with the workshop's data; made if it is not there")
    private String folder;

    @Option(names = "--demo", description = "open an invented workshop to look round in, in a folder of its own")
    private boolean demo;

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "port on this computer; 7711 if not said, 0 for any free one")
    private int port = 7711;

    BenchCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > 65535) {
            throw new BadArgument("--port " + port + ": a port is a number from 0 to 65535");
        }
        try (Shop shop = opened();
                Bench bench = started(shop)) {
            console.line("Wetside's bench is open at " + bench.address() + "  (data in " + shop.folder() + ")");
            console.line("Stop it with Ctrl-C.");
            console.printer().flush();
            bench.warm();
            untilStopped();
            return 0;
        } catch (ShopTrouble e) {
            throw new BadArgument(e.getMessage());
        }
    }

    private Shop opened() {
        Shop shop = Shop.open(path());
        if (demo && !Demo.fill(shop, Clock.systemDefaultZone())) {
            console.line("There is a workshop in " + shop.folder() + " already; it is opened as it is.");
        }
        return shop;
    }

    private Path path() {
        try {
            if (folder == null) {
                return demo
                        ? Files.createTempDirectory("wetside-demo")
                        : Path.of(System.getProperty("user.home"), "wetside").toAbsolutePath();
            }
            return Path.of(folder).toAbsolutePath();
        } catch (IOException e) {
            throw new BadArgument("no folder for the demo can be made: " + e.getMessage());
        } catch (InvalidPathException e) {
            throw new BadArgument("--data: '" + folder + "' is no name of a folder");
        }
    }

    private Bench started(Shop shop) {
        try {
            return Bench.start(shop, Clock.systemDefaultZone(), port);
        } catch (RuntimeException e) {
            throw new BadArgument(
                    "port " + port + " cannot be used (" + e.getMessage() + "); choose another with --port");
        }
    }

    /** The program's end closes what is open. */
    private static void untilStopped() throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        Thread main = Thread.currentThread();
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            stopped.countDown();
            try {
                main.join(5000);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }));
        stopped.await();
    }
}
