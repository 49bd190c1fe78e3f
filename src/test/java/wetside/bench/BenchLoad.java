package wetside.bench;

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
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import wetside.shop.Shop;

/**
 * No test: measures the bench with many jobs and people. {@code java ... wetside.bench.BenchLoad FOLDER JOBS PEOPLE SECONDS};
 * a folder without a shop is filled first. Prints, for every sort of page, the time from request to whole answer as the
 * people saw it, on the loopback address.
 */
final class BenchLoad {
    private static final String[] WORDS =
            ("steam water pump drips leaks cold hot slow loud nothing group wand gauge needle"
                            + " tray under hums trips lamp dark coffee weak bitter short long every morning since yesterday stops")
                    .split(" ");
    private static final String[] FILES = {"twin-boiler-lever|B|", "exchanger-lever|B|230 V", "single-boiler|B|230 V"};
    private static final int MACHINES = 8000;

    private BenchLoad() {}

    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int jobs = Integer.parseInt(args[1]);
        boolean fresh = !Files.exists(folder.resolve(Shop.FILE));
        try (Shop shop = Shop.open(folder)) {
            if (fresh) {
                fill(shop, jobs);
            }
            long start = System.nanoTime();
            try (Bench bench = Bench.start(shop, Clock.systemUTC(), 0)) {
                HttpClient client = HttpClient.newHttpClient();
                get(client, bench, "/jobs");
                System.out.printf("start of the server to first page: %.0f ms%n", (System.nanoTime() - start) / 1e6);
                click(bench, jobs, Integer.parseInt(args[2]), 8, new ConcurrentHashMap<>());
                Map<String, List<Double>> times = new ConcurrentHashMap<>();
                click(bench, jobs, Integer.parseInt(args[2]), Integer.parseInt(args[3]), times);
                new TreeMap<>(times).forEach(BenchLoad::print);
            }
        }
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
            jobs.add(i, 2000L + i, machine, open ? states[i % 5] : "DONE", complaint, at, at, "pump: worn vanes");
            entries.add(i, at, "said", "Mira", complaint, "{}");
            for (int e = 0; e < 10; e++) {
                entries.add(i, at, e % 3 == 0 ? "work" : "note", "Ines", sentence(random, 12), "{}");
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

    private static String sentence(Random random, int words) {
        StringBuilder s = new StringBuilder();
        for (int i = 0; i < words; i++) {
            s.append(i == 0 ? "" : " ").append(WORDS[random.nextInt(WORDS.length)]);
        }
        return s.toString();
    }

    /** Everybody clicks about once a second. */
    private static void click(Bench bench, int jobs, int people, int seconds, Map<String, List<Double>> times)
            throws InterruptedException {
        List<Thread> all = new ArrayList<>();
        long end = System.nanoTime() + seconds * 1_000_000_000L;
        for (int p = 0; p < people; p++) {
            Random random = new Random(p + 1L);
            HttpClient client = HttpClient.newHttpClient();
            Thread person = new Thread(() -> {
                while (System.nanoTime() < end) {
                    String sort = List.of("board", "search", "job", "done").get(random.nextInt(4));
                    long from = System.nanoTime();
                    get(client, bench, page(sort, random, jobs));
                    times.computeIfAbsent(sort, s -> new CopyOnWriteArrayList<>())
                            .add((System.nanoTime() - from) / 1e6);
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

    private static void get(HttpClient client, Bench bench, String path) {
        try {
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + bench.port() + path))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(path + " gave " + answer.statusCode());
            }
        } catch (java.io.IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void print(String sort, List<Double> times) {
        double[] t = times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(
                "%-7s %5d pages   median %6.1f ms   95 %% %6.1f ms   99 %% %6.1f ms   worst %6.1f ms%n",
                sort,
                t.length,
                at(t, 0.5),
                at(t, 0.95),
                at(t, 0.99),
                Arrays.stream(t).max().orElse(0));
    }

    private static double at(double[] sorted, double share) {
        return sorted[Math.min(sorted.length - 1, (int) (share * sorted.length))];
    }
}
