package wetside.casework;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.CheckedOutputStream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;

/**
 * Signatures kept on disk between runs of the program. A file is written beside its place and moved there whole, ends in a
 * checksum, and is thrown away when anything about it is wrong: it can always be computed again. One process at a time
 * builds a library; others wait for it and read what it left.
 */
public final class LibraryStore {
    private static final String MAGIC = "wetside signatures 2";

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
        try (CheckedInputStream checked = new CheckedInputStream(
                        new BufferedInputStream(Files.newInputStream(file), 1 << 16), new CRC32());
                DataInputStream in = new DataInputStream(checked)) {
            Library library = read(in, checked, key, empty, Files.size(file));
            file.toFile().setLastModified(System.currentTimeMillis());
            return Optional.of(library);
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static Library read(
            DataInputStream in, CheckedInputStream checked, LibraryKey key, Library empty, long size)
            throws IOException {
        int causes = empty.causes().size();
        int questions = empty.questions().size();
        if (!in.readUTF().equals(MAGIC) || !in.readUTF().equals(key.hash()) || in.readInt() != causes) {
            throw new IOException("another library");
        }
        int width = in.readInt();
        float[][] rows = new float[causes][];
        int[] simulated = new int[causes];
        for (int c = 0; c < causes; c++) {
            int draws = in.readInt();
            if (width != questions || draws < 0 || (long) draws * width * Float.BYTES > size) {
                throw new IOException("damaged");
            }
            rows[c] = new float[draws * width];
            simulated[c] = in.readInt();
            byte[] bytes = in.readNBytes(rows[c].length * Float.BYTES);
            java.nio.ByteBuffer.wrap(bytes).asFloatBuffer().get(rows[c]);
        }
        long sum = checked.getChecksum().getValue();
        if (in.readLong() != sum) {
            throw new IOException("damaged");
        }
        return empty.with(Signatures.of(width, rows, simulated));
    }

    /** Stores a library whole or not at all. */
    public void save(LibraryKey key, Library library) throws IOException {
        Files.createDirectories(folder);
        Path part = Files.createTempFile(folder, key.name(), ".part");
        try {
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE);
                    CheckedOutputStream checked = new CheckedOutputStream(
                            new BufferedOutputStream(java.nio.channels.Channels.newOutputStream(channel), 1 << 16),
                            new CRC32());
                    DataOutputStream out = new DataOutputStream(checked)) {
                write(out, checked, key, library);
                out.flush();
                channel.force(true);
            }
            Files.move(part, file(key), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
        tidy();
    }

    /** Keeps the libraries used last: another installation or a newer program makes a new one each. */
    private void tidy() throws IOException {
        List<Path> oldestFirst;
        try (Stream<Path> files = Files.list(folder)) {
            oldestFirst = files.filter(f -> f.toString().endsWith(ENDING))
                    .sorted(Comparator.comparingLong(f -> f.toFile().lastModified()))
                    .toList();
        }
        for (Path old : oldestFirst.subList(0, Math.max(0, oldestFirst.size() - KEPT))) {
            Files.deleteIfExists(old);
        }
    }

    private static void write(DataOutputStream out, CheckedOutputStream checked, LibraryKey key, Library library)
            throws IOException {
        Signatures s = library.signatures();
        out.writeUTF(MAGIC);
        out.writeUTF(key.hash());
        out.writeInt(s.causes());
        out.writeInt(s.questions());
        for (int c = 0; c < s.causes(); c++) {
            float[] row = s.rows(c);
            out.writeInt(s.draws(c));
            out.writeInt(s.simulated(c));
            java.nio.ByteBuffer bytes = java.nio.ByteBuffer.allocate(row.length * Float.BYTES);
            bytes.asFloatBuffer().put(row);
            out.write(bytes.array());
        }
        out.flush();
        out.writeLong(checked.getChecksum().getValue());
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
