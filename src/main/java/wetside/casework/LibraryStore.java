package wetside.casework;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;

/**
 * Signatures kept on disk between runs of the program. A file is written beside its place and moved there whole, ends in a
 * checksum, and is thrown away when anything about it is wrong: it can always be computed again. One process at a time
 * builds a library; others wait for it and read what it left.
 */
public final class LibraryStore {
    private static final String MAGIC = "wetside signatures 3";

    private static final String ENDING = ".signatures";
    private static final int KEPT = 24;

    private final Path folder;

    public LibraryStore(Path folder) {
        this.folder = folder;
    }

    /** The system property wetside.cache, else WETSIDE_CACHE, else XDG_CACHE_HOME/wetside, else ~/.cache/wetside. */
    public static LibraryStore usual() {
        String own = System.getProperty("wetside.cache", System.getenv("WETSIDE_CACHE"));
        if (own != null && !own.isBlank()) {
            return new LibraryStore(Path.of(own));
        }
        String xdg = System.getenv("XDG_CACHE_HOME");
        Path base = xdg == null || xdg.isBlank() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(xdg);
        return new LibraryStore(base.resolve("wetside"));
    }

    private Path file(LibraryKey key) {
        return folder.resolve(key.name() + ENDING);
    }

    /** What is stored for this key, or nothing when there is none or it is damaged. */
    public Optional<Library> load(LibraryKey key, Library empty) {
        Path file = file(key);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (StoredFile in = StoredFile.open(file)) {
            Library library = read(in, key, empty);
            file.toFile().setLastModified(System.currentTimeMillis());
            return Optional.of(library);
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static Library read(StoredFile in, LibraryKey key, Library empty) throws IOException {
        int causes = empty.causes().size();
        int questions = empty.questions().size();
        if (!in.text().equals(MAGIC) || !in.text().equals(key.hash()) || in.number() != causes) {
            throw new IOException("another library");
        }
        int width = in.number();
        float[][] rows = new float[causes][];
        int[] simulated = new int[causes];
        for (int c = 0; c < causes; c++) {
            int draws = in.number();
            if (width != questions || draws < 0 || !in.holds((long) draws * width * Float.BYTES)) {
                throw new IOException("damaged");
            }
            rows[c] = new float[draws * width];
            simulated[c] = in.number();
            in.floats(rows[c]);
        }
        in.checked();
        return empty.with(Signatures.of(width, rows, simulated));
    }

    /** Stores a library whole or not at all. */
    public void save(LibraryKey key, Library library) throws IOException {
        StoredFile.write(file(key), out -> write(out, key, library));
        tidy(ENDING);
        tidy(PairStore.ENDING);
    }

    /** What was run of pairs of causes on the machine of a key. */
    PairStore pairs(LibraryKey key, List<String> questions) {
        return new PairStore(folder, key, questions);
    }

    /** Keeps the libraries used last: another installation or a newer program makes a new one each. */
    private void tidy(String ending) throws IOException {
        List<Path> oldestFirst;
        try (Stream<Path> files = Files.list(folder)) {
            oldestFirst = files.filter(f -> f.toString().endsWith(ending))
                    .sorted(Comparator.comparingLong(f -> f.toFile().lastModified()))
                    .toList();
        }
        for (Path old : oldestFirst.subList(0, Math.max(0, oldestFirst.size() - KEPT))) {
            Files.deleteIfExists(old);
        }
    }

    private static void write(StoredFile out, LibraryKey key, Library library) throws IOException {
        Signatures s = library.signatures();
        out.text(MAGIC);
        out.text(key.hash());
        out.number(s.causes());
        out.number(s.questions());
        for (int c = 0; c < s.causes(); c++) {
            out.number(s.draws(c));
            out.number(s.simulated(c));
            out.floatsOf(s.rows(c));
        }
    }

    /** Held while a library is being built; close it to let others go on. */
    public interface Hold extends AutoCloseable {
        @Override
        void close();
    }

    /** Waits until no other process builds this library, then holds it. Without a writable folder nothing is held. */
    public Hold hold(LibraryKey key, Runnable waiting) {
        try {
            Files.createDirectories(folder);
            FileChannel channel = FileChannel.open(
                    folder.resolve(key.name() + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = lock(channel, waiting);
            return () -> release(lock, channel);
        } catch (IOException e) {
            return () -> {};
        }
    }

    private static FileLock lock(FileChannel channel, Runnable waiting) throws IOException {
        boolean told = false;
        while (true) {
            try {
                FileLock lock = channel.tryLock();
                if (lock != null) {
                    return lock;
                }
            } catch (OverlappingFileLockException e) {
                // another thread of this process builds it
            }
            if (!told) {
                waiting.run();
                told = true;
            }
            try {
                Thread.sleep(100);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IOException("interrupted", e);
            }
        }
    }

    private static void release(FileLock lock, FileChannel channel) {
        try {
            lock.release();
            channel.close();
        } catch (IOException e) {
            // the process's end releases it too
        }
    }
}
