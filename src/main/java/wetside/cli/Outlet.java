package wetside.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** Standard output that remembers why it could not be written; a reader who has gone is no failure. */
final class Outlet extends FilterOutputStream {
    private IOException failure;

    Outlet(OutputStream to) {
        super(to);
    }

    @Override
    public void write(int b) {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) {
        if (failure == null) {
            try {
                out.write(bytes, from, length);
            } catch (IOException e) {
                failure = e;
            }
        }
    }

    @Override
    public void flush() {
        if (failure == null) {
            try {
                out.flush();
            } catch (IOException e) {
                failure = e;
            }
        }
    }

    /** Why what was printed is not there, or null when all is well or nobody wants it any more. */
    String failure() {
        boolean gone = failure != null
                && String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT).contains("pipe");
        return failure == null || gone ? null : String.valueOf(failure.getMessage());
    }
}
