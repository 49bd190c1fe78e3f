package wetside.casework;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Pairs of causes that were run on the twin, kept on disk beside the library of their machine: what two faults at once read
 * is as much of the machine as what one reads, so no case has to run a pair that another ran before. A file that is damaged
 * or of another machine counts as none.
 */
final class PairStore {
    static final String ENDING = ".pairs";

    private static final String MAGIC = "wetside pairs 1";
    /** The oldest go when there are more. */
    private static final int KEPT = 500;

    private final Path file;
    private final LibraryKey key;
    private final List<String> questions;

    /** @param questions in the order of the rows */
    PairStore(Path folder, LibraryKey key, List<String> questions) {
        file = folder.resolve(key.name() + ENDING);
        this.key = key;
        this.questions = questions;
    }

    /** All that is kept, what was run first first; nothing when there is none or it is damaged. */
    Map<String, Pairs.Run> load() {
        Map<String, Pairs.Run> runs = new LinkedHashMap<>();
        if (!Files.isRegularFile(file)) {
            return runs;
        }
        try (StoredFile in = StoredFile.open(file)) {
            if (!in.text().equals(MAGIC) || !in.text().equals(key.hash()) || in.number() != questions.size()) {
                throw new IOException("of another machine");
            }
            for (int n = in.number(); n > 0; n--) {
                String pair = in.text();
                runs.put(pair, run(in));
            }
            in.checked();
            return runs;
        } catch (IOException | RuntimeException e) {
            return new LinkedHashMap<>();
        }
    }

    private Pairs.Run run(StoredFile in) throws IOException {
        Set<String> readings = new HashSet<>();
        int n = in.number();
        if (n < 0 || n > questions.size()) {
            throw new IOException("damaged");
        }
        int[] which = new int[n];
        for (int i = 0; i < n; i++) {
            which[i] = in.number();
            readings.add(questions.get(which[i]));
        }
        float[] read = new float[Pairs.DRAWS * n];
        in.floats(read);
        return new Pairs.Run(rows(read, which), Set.copyOf(readings));
    }

    private float[] rows(float[] read, int... which) {
        int width = questions.size();
        float[] rows = new float[Pairs.DRAWS * width];
        Arrays.fill(rows, Float.NaN);
        for (int k = 0; k < Pairs.DRAWS; k++) {
            for (int i = 0; i < which.length; i++) {
                rows[k * width + which[i]] = read[k * which.length + i];
            }
        }
        return rows;
    }

    /** Keeps these beside what others have kept meanwhile. */
    void save(Map<String, Pairs.Run> runs) throws IOException {
        Map<String, Pairs.Run> all = load();
        runs.forEach((pair, run) -> {
            Pairs.Run there = all.remove(pair);
            all.put(pair, there != null && there.readings().containsAll(run.readings()) ? there : run);
        });
        List<String> newest = List.copyOf(all.keySet()).subList(Math.max(0, all.size() - KEPT), all.size());
        StoredFile.write(file, out -> {
            out.text(MAGIC);
            out.text(key.hash());
            out.number(questions.size());
            out.number(newest.size());
            for (String pair : newest) {
                out.text(pair);
                run(out, all.get(pair));
            }
        });
    }

    private void run(StoredFile out, Pairs.Run run) throws IOException {
        int width = questions.size();
        int[] which = IntStream.range(0, width)
                .filter(q -> run.readings().contains(questions.get(q)))
                .toArray();
        out.number(which.length);
        for (int q : which) {
            out.number(q);
        }
        float[] read = new float[Pairs.DRAWS * which.length];
        for (int k = 0; k < Pairs.DRAWS; k++) {
            for (int i = 0; i < which.length; i++) {
                read[k * which.length + i] = run.rows()[k * width + which[i]];
            }
        }
        out.floatsOf(read);
    }
}
