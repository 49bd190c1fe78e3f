package wetside.bench;

import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.DoubleStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import wetside.department.Ledger;
import wetside.shop.Outcomes;
import wetside.shop.Shop;

/**
 * No test: measures the bench with many jobs and people. {@code java ... wetside.bench.BenchLoad FOLDER JOBS PEOPLE SECONDS};
 * a folder without a shop is filled first. Prints, for every sort of page, the time the server says it took and the time from
 * request to whole answer as the people saw it, on the loopback address.
 */
final class BenchLoad {
    private static final String[] WORDS =
            ("steam water pump drips leaks cold hot slow loud nothing group wand gauge needle"
                            + " tray under hums trips lamp dark coffee weak bitter short long every morning since yesterday stops")
                    .split(" ");
    private static final String[] FILES = {"twin-boiler-lever|B|", "exchanger-lever|B|230 V", "single-boiler|B|230 V"};
    private static final int MACHINES = 8000;
    /** Clicked before anything is measured [s]. */
    private static final int WARM = 30;

    private static final String[] FINDINGS = {
        "pump: worn vanes", "works as it should", "breaker: leaks when seated", "over-pressure: held open by grit"
    };

    private BenchLoad() {}

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int jobs = Integer.parseInt(args[1]);
        boolean fresh = !Files.exists(folder.resolve(Shop.FILE));
        try (Shop shop = Shop.open(folder)) {
            if (fresh) {
                fill(shop, jobs);
            }
            learning(shop);
            long start = System.nanoTime();
            try (Bench bench = Bench.start(shop, Clock.systemUTC(), 0)) {
                HttpClient client = HttpClient.newHttpClient();
                get(client, bench, "/jobs");
                System.out.printf("start of the server to first page: %.0f ms%n", (System.nanoTime() - start) / 1e6);
                click(bench, jobs, Integer.parseInt(args[2]), WARM, new ConcurrentHashMap<>());
                Map<String, List<Took>> times = new ConcurrentHashMap<>();
                click(bench, jobs, Integer.parseInt(args[2]), Integer.parseInt(args[3]), times);
                new TreeMap<>(times).forEach(BenchLoad::print);
            }
        }
    }

    /** Processor time the rates of a model's causes cost: read for the first time, looked at again, and after a job was closed. */
    private static void learning(Shop shop) {
        Outcomes outcomes = new Outcomes(shop, Clock.systemUTC());
        String file = FILES[0].split("\\|")[0];
        for (int round = 0; round < 3; round++) {
            Ledger ledger = new Ledger(outcomes);
            ledger.title(file);
            System.out.printf(
                    "%d jobs of a model read: %.0f ms%n", ledger.models().get(file), time(() -> ledger.of(file)));
            System.out.printf("looked at again: %.2f ms%n", time(() -> ledger.of(file)));
            long number = ledger.of(file).jobs().get(7).outcome().number();
            outcomes.leaveOut(number, "measured", "Ines");
            System.out.printf("after a change: %.2f ms%n", time(() -> ledger.of(file)));
            outcomes.leaveOut(number, "", "Ines");
            System.out.printf(
                    "shares and intervals of all causes: %.1f ms%n", time(() -> ledger.figures(file, Instant.now())));
            System.out.printf(
                    "weights alone: %.1f ms%n",
                    time(() -> ledger.of(file)
                            .experience()
                            .shares(ledger.of(file).model().orElseThrow().causes(), 24_000)));
        }
    }

    private static double time(Runnable what) {
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        what.run();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
    }

    private static void fill(Shop shop, int jobs) {
        Random random = new Random(7);
        Instant now = Instant.now();
        shop.change(h -> {
            PreparedBatch owners = h.prepareBatch("INSERT INTO owner (id, name) VALUES (?, ?)");
            PreparedBatch machines = h.prepareBatch("INSERT INTO machine (id, serial, file, revision, supply, owner_id,"
                    + " fed_from, voltage) VALUES (?, ?, ?, ?, ?, ?, 'tank', ?)");
            PreparedBatch words = words(h);
            for (int i = 1; i <= MACHINES; i++) {
                String[] f = FILES[i % FILES.length].split("\\|", -1);
                owners.add(i, "Owner " + i);
                machines.add(i, "Q " + i, f[0], f[1], f[2], i, 225.0 + i % 10);
                words.add(4L * i + 1, "machine", i, "Q " + i, f[0]);
                words.add(4L * i + 2, "owner", i, "Owner " + i, "");
            }
            owners.execute();
            machines.execute();
            words.execute();
            return null;
        });
        for (int first = 1; first <= jobs; first += 5000) {
            int from = first;
            shop.change(h -> jobs(h, from, Math.min(jobs, from + 4999), jobs, random, now));
        }
    }

    private static PreparedBatch words(Handle h) {
        return h.prepareBatch("INSERT INTO words (rowid, sort, ref, title, body) VALUES (?, ?, ?, ?, ?)");
    }

    /** Nearly all done, the last few hundred open, each with a dozen entries and a few readings. */
    private static Object jobs(Handle h, int from, int to, int all, Random random, Instant now) {
        PreparedBatch jobs = h.prepareBatch("INSERT INTO job (id, number, machine_id, state, complaint, opened, moved,"
                + " finding) VALUES (?, ?, ?, ?, ?, ?, ?, ?)");
        PreparedBatch entries =
                h.prepareBatch("INSERT INTO entry (job_id, at, sort, who, words, detail) VALUES (?, ?, ?, ?, ?, ?)");
        PreparedBatch readings = h.prepareBatch("INSERT INTO reading (id, job_id, phase, asked, said, verdict, who, at)"
                + " VALUES (?, ?, 'found', 'blind-disc pressure', '6.2 bar', 'low', 'Ines', ?)");
        PreparedBatch words = words(h);
        String[] states = {"ASKED", "WAITING_FOR_MACHINE", "ON_BENCH", "WAITING_FOR_PART", "TO_PROVE"};
        for (int i = from; i <= to; i++) {
            boolean open = i > all - 150;
            String at = now.minus(Duration.ofHours(open ? random.nextInt(300) : 24L + (all - i)))
                    .toString();
            String complaint = sentence(random, 8);
            int machine = 1 + random.nextInt(MACHINES);
            entries.add(i, at, "said", "Mira", complaint, "{}");
            String finding = open ? "" : FINDINGS[random.nextInt(FINDINGS.length)];
            for (int e = 0; e < 10; e++) {
                entries.add(i, at, e % 3 == 0 ? "work" : "note", "Ines", sentence(random, 12), "{}");
            }
            jobs.add(i, 2000L + i, machine, open ? states[i % 5] : "DONE", complaint, at, at, finding);
            if (!open) {
                close(entries, i, at, finding, random.nextBoolean());
            }
            readings.add(i, i, at);
            entries.add(
                    i,
                    at,
                    "reading",
                    "Ines",
                    "blind-disc pressure: 6.2 bar, low",
                    "{\"reading\":" + i + ",\"expected\":\"8.1 to 8.9 bar\",\"value\":6.2,\"low\":8.1,\"high\":8.9}");
            words.add(
                    4L * (2000L + i),
                    "job",
                    2000L + i,
                    "" + (2000 + i),
                    complaint + " Owner " + machine + " Q " + machine);
        }
        jobs.execute();
        readings.execute();
        entries.execute();
        words.execute();
        return null;
    }

    /** Half of them proved, half by what was believed. */
    private static void close(PreparedBatch entries, int job, String at, String finding, boolean proved) {
        String believed = "{\"cause\":\"" + finding + "\",\"believed\":{\"" + finding
                + "\":0.87,\"works as it should\":0.04,\"pump: scored by running dry\":0.03}}";
        entries.add(job, at, "finding", "Ines", finding, proved ? "{}" : believed);
        for (String what : new String[] {"blind-disc pressure", "water flow in 10 s"}) {
            if (proved) {
                entries.add(job, at, "proof", "Ines", "passed: " + what, "{}");
            }
        }
        entries.add(job, at, "state", "Mira", "done", "{}");
    }

    private static String sentence(Random random, int words) {
        StringBuilder s = new StringBuilder();
        for (int i = 0; i < words; i++) {
            s.append(i == 0 ? "" : " ").append(WORDS[random.nextInt(WORDS.length)]);
        }
        return s.toString();
    }

    /** Everybody clicks about once a second. */
    private static void click(Bench bench, int jobs, int people, int seconds, Map<String, List<Took>> times)
            throws InterruptedException {
        List<Thread> all = new ArrayList<>();
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        for (int p = 0; p < people; p++) {
            Random random = new Random(p + 1L);
            HttpClient client = HttpClient.newHttpClient();
            Thread person = new Thread(() -> {
                while (System.nanoTime() < end) {
                    String sort = List.of("board", "search", "job", "done", "department")
                            .get(random.nextInt(5));
                    long from = System.nanoTime();
                    double server = get(client, bench, page(sort, random, jobs));
                    times.computeIfAbsent(sort, s -> new CopyOnWriteArrayList<>())
                            .add(new Took(server, (System.nanoTime() - from) / 1e6));
                    pause(500 + random.nextInt(1000));
                }
            });
            person.start();
            all.add(person);
        }
        for (Thread person : all) {
            person.join();
        }
    }

    private static String page(String sort, Random random, int jobs) {
        return switch (sort) {
            case "board" -> "/jobs";
            case "search" ->
                "/search?q=" + WORDS[random.nextInt(WORDS.length)]
                        + (random.nextBoolean() ? "" : "+" + WORDS[random.nextInt(WORDS.length)]);
            case "department" -> "/department";
            case "job" -> "/jobs/" + (2001 + random.nextInt(jobs));
            default -> "/done?page=" + (1 + random.nextInt(5));
        };
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static double get(HttpClient client, Bench bench, String path) {
        try {
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + bench.port() + path))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(path + " gave " + answer.statusCode());
            }
            String took = answer.headers().firstValue(Timing.HEADER).orElseThrow();
            return Double.parseDouble(took.substring(took.indexOf('=') + 1));
        } catch (java.io.IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Of one page [ms]. */
    private record Took(double server, double seen) {}

    private static void print(String sort, List<Took> times) {
        System.out.printf(
                "%-10s %5d pages   server %s   seen %s%n",
                sort,
                times.size(),
                line(times.stream().mapToDouble(Took::server)),
                line(times.stream().mapToDouble(Took::seen)));
    }

    private static String line(DoubleStream times) {
        double[] t = times.sorted().toArray();
        return String.format(
                "median %6.1f   95 %% %6.1f   99 %% %6.1f   worst %6.1f ms",
                at(t, 0.5), at(t, 0.95), at(t, 0.99), t[t.length - 1]);
    }

    private static double at(double[] sorted, double share) {
        return sorted[Math.min(sorted.length - 1, (int) (share * sorted.length))];
    }
}
