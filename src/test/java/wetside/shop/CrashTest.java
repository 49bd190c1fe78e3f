package wetside.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program killed in the middle of writing loses nothing that it has acknowledged. */
class CrashTest {
    private static final int ACKNOWLEDGED = 60;

    @TempDir
    Path folder;

    /** Writes entries for ever, each told on the output once it is kept. */
    static final class Writer {
        public static void main(String[] args) {
            try (Shop shop = Shop.open(Path.of(args[0]))) {
                Jobs jobs = new Jobs(shop, Clock.systemUTC());
                for (int i = 0; ; i++) {
                    jobs.note(Long.parseLong(args[1]), "note", "writer", "entry " + i, "{}", null);
                    System.out.println(i);
                    System.out.flush();
                }
            }
        }
    }

    @Test
    void killedWhileWriting() throws Exception {
        long number;
        try (Shop shop = Shop.open(folder)) {
            long machine = Registered.machine(shop, "1", "twin-boiler-lever", "B", "", "O", "tank");
            number = new Jobs(shop, Clock.systemUTC()).open(machine, "hums", "desk");
        }
        for (int round = 0; round < 2; round++) {
            int last = killAfter(number, ACKNOWLEDGED * (round + 1));
            try (Shop shop = Shop.open(folder)) {
                Jobs jobs = new Jobs(shop, Clock.systemUTC());
                Job job = jobs.byNumber(number).orElseThrow();
                List<Entry> kept = jobs.timeline(job.id()).stream()
                        .filter(e -> e.sort().equals("note"))
                        .toList();
                assertThat(kept).extracting(Entry::words).contains("entry " + last);
                assertThat(kept.stream()
                                .filter(e -> e.words().equals("entry 0"))
                                .count())
                        .isEqualTo(round + 1);
                // whole transactions only: each entry raised the version by one
                assertThat(job.version()).isEqualTo(1 + kept.size());
                String sound = shop.read(h -> h.createQuery("PRAGMA integrity_check")
                        .mapTo(String.class)
                        .one());
                assertThat(sound).isEqualTo("ok");
            }
        }
    }

    /** Starts a writer, kills it without warning after so many, and gives the last it acknowledged. */
    private int killAfter(long number, int entries) throws IOException, InterruptedException {
        Process writer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Writer.class.getName(),
                        folder.toString(),
                        Long.toString(number))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        List<Integer> told = new ArrayList<>();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(writer.getInputStream()))) {
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                told.add(Integer.valueOf(line));
                if (told.size() == entries) {
                    writer.destroyForcibly();
                }
            }
        } catch (IOException killed) {
            // the pipe may break before its end is read
        }
        assertThat(writer.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(told).hasSizeGreaterThanOrEqualTo(entries);
        return told.get(told.size() - 1);
    }
}
