package wetside.bench;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import java.time.Clock;
import java.util.List;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shop;

/** The running server. */
public final class Bench implements AutoCloseable {
    /** Forms are small; photos are the largest things sent. */
    private static final long LARGEST_REQUEST = 12_000_000;

    private final Workshop workshop;
    private final Javalin server;
    private final Libraries libraries;
    private final RunPages runs;

    private Bench(Workshop workshop, Javalin server, Libraries libraries, RunPages runs) {
        this.workshop = workshop;
        this.runs = runs;
        this.server = server;
        this.libraries = libraries;
    }

    /** Serves a shop on the loopback address; port 0 takes any that is free. */
    public static Bench start(Shop shop, Clock clock, int port) {
        Workshop workshop = new Workshop(shop, clock);
        Pages pages = new Pages();
        Libraries libraries = new Libraries();
        Subjects subjects = new Subjects(workshop);
        Drawings drawings = new Drawings();
        RunPages runs = new RunPages(workshop, pages, subjects, drawings);
        List<Routes> all = List.of(
                new Assets(),
                new Units(),
                new JobsPages(workshop, pages),
                new JobPages(workshop, pages),
                new SearchPages(workshop, pages),
                new ReportPages(workshop),
                new FaultPages(workshop, pages, libraries),
                new MachinesPages(workshop, pages),
                new MachinePages(workshop, pages, subjects, drawings),
                new ReadingsPages(workshop, pages, subjects),
                runs,
                new WaterPages(workshop, pages, subjects),
                new DepartmentPages(workshop, pages));
        Javalin server = Javalin.create(config -> {
            quiet(config);
            new Timing().routes(config.routes);
            new Guard().routes(config.routes);
            new Troubles(pages).routes(config.routes);
            all.forEach(r -> r.routes(config.routes));
        });
        Bench bench = new Bench(workshop, server.start("127.0.0.1", port), libraries, runs);
        workshop.readJobs();
        return bench;
    }

    private static void quiet(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        // Holds the program open for five seconds after everything else has ended.
        config.startup.startupWatcherEnabled = false;
        config.http.maxRequestSize = LARGEST_REQUEST;
        config.http.generateEtags = false;
        config.jetty.multipartConfig.maxFileSize(LARGEST_REQUEST, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_REQUEST, SizeUnit.BYTES);
    }

    /**
     * Makes a beginning for the machines of the workshop, so that neither their jobs nor fault finding on them need wait;
     * behind all else.
     */
    public void warm() {
        List<RegisteredMachine> lately = workshop.register().lately(Libraries.WARMED);
        Thread models = new Thread(() -> lately.forEach(m -> JobView.casework(workshop, m)), "models beforehand");
        models.setDaemon(true);
        models.setPriority(Thread.MIN_PRIORITY);
        models.start();
        libraries.warm(lately.stream().map(Libraries.Place::of).toList());
    }

    public int port() {
        return server.port();
    }

    /** Where a browser finds it. */
    public String address() {
        return "http://127.0.0.1:" + port() + "/";
    }

    @Override
    public void close() {
        runs.close();
        server.stop();
        libraries.close();
    }
}
