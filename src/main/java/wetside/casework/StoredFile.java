package wetside.casework;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.zip.CRC32;

/**
 * A file of numbers that can always be computed again: written beside its place and moved there whole, it ends in a checksum
 * of all that stands before. Read and written through a small buffer, numbers as this sort of processor has them, so that
 * tens of megabytes are there in hundredths of a second.
 */
final class StoredFile implements Closeable {
    private static final int BUFFER = 1 << 18;
    private static final int LONGEST = 1 << 12;

    private final FileChannel channel;
    private final ByteBuffer buffer = ByteBuffer.allocateDirect(BUFFER).order(ByteOrder.LITTLE_ENDIAN);
    private final CRC32 sum = new CRC32();
    private final long size;
    private long summed;

    private StoredFile(FileChannel channel, long size) {
        this.channel = channel;
        this.size = size;
    }

    /** What is written into a file. */
    interface Content {
        void write(StoredFile out) throws IOException;
    }

    static StoredFile open(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.READ);
        StoredFile in = new StoredFile(channel, channel.size());
        in.buffer.limit(0);
        return in;
    }

    /** Stores it whole or not at all. */
    static void write(Path file, Content content) throws IOException {
        Files.createDirectories(file.getParent());
        Path part = Files.createTempFile(file.getParent(), "begun", ".part");
        try {
            try (StoredFile out = new StoredFile(FileChannel.open(part, StandardOpenOption.WRITE), 0)) {
                content.write(out);
                out.emptied();
                out.buffer.putLong(out.sum.getValue());
                out.emptied();
                out.channel.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Whether a file of this size can hold so many bytes: asked before room is made for them. */
    boolean holds(long bytes) {
        return bytes >= 0 && bytes <= size;
    }

    int number() throws IOException {
        filled(Integer.BYTES);
        return buffer.getInt();
    }

    void number(int n) throws IOException {
        room(Integer.BYTES);
        buffer.putInt(n);
    }

    String text() throws IOException {
        int length = number();
        if (length < 0 || length > LONGEST) {
            throw new IOException("damaged");
        }
        filled(length);
        byte[] bytes = new byte[length];
        buffer.get(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }

    void text(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > LONGEST) {
            throw new IOException("too long to be kept: " + text);
        }
        number(bytes.length);
        room(bytes.length);
        buffer.put(bytes);
    }

    void floats(float[] into) throws IOException {
        for (int at = 0; at < into.length; ) {
            filled(Float.BYTES);
            int n = Math.min(into.length - at, buffer.remaining() / Float.BYTES);
            buffer.asFloatBuffer().get(into, at, n);
            buffer.position(buffer.position() + n * Float.BYTES);
            at += n;
        }
    }

    void floatsOf(float[] from) throws IOException {
        for (int at = 0; at < from.length; ) {
            room(Float.BYTES);
            int n = Math.min(from.length - at, buffer.remaining() / Float.BYTES);
            buffer.asFloatBuffer().put(from, at, n);
            buffer.position(buffer.position() + n * Float.BYTES);
            at += n;
        }
    }

    /** Throws when what was read is not what was written, or something follows. */
    void checked() throws IOException {
        filled(Long.BYTES);
        if (buffer.getLong() != sum.getValue() || buffer.hasRemaining() || channel.position() != size) {
            throw new IOException("damaged");
        }
    }

    private void filled(int bytes) throws IOException {
        if (buffer.remaining() >= bytes) {
            return;
        }
        buffer.compact();
        int from = buffer.position();
        while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
            // until the buffer or the file is at its end
        }
        buffer.flip();
        int end = (int) Math.min(buffer.limit(), from + Math.max(0, size - Long.BYTES - summed));
        sum(from, end);
        summed += end - from;
        if (buffer.remaining() < bytes) {
            throw new IOException("damaged");
        }
    }

    private void room(int bytes) throws IOException {
        if (buffer.remaining() < bytes) {
            emptied();
        }
    }

    private void emptied() throws IOException {
        buffer.flip();
        sum(0, buffer.limit());
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
        buffer.clear();
    }

    private void sum(int from, int end) {
        if (end > from) {
            sum.update(buffer.duplicate().limit(end).position(from));
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
