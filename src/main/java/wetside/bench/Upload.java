package wetside.bench;

import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** A photo as sent, known by what is in it, not by what it is called. */
record Upload(String name, String type, byte[] content) {
    private static final int LARGEST = 10_000_000;

    static Upload of(UploadedFile file) {
        if (file == null || file.size() == 0) {
            throw new BadForm("Photo: choose a file first");
        }
        if (file.size() > LARGEST) {
            throw new BadForm("Photo: " + file.filename() + " is larger than 10 MB; take it smaller");
        }
        try (InputStream in = file.content()) {
            byte[] content = in.readAllBytes();
            return new Upload(name(file.filename()), type(file.filename(), content), content);
        } catch (IOException e) {
            throw new BadForm("Photo: it did not arrive whole; send it again");
        }
    }

    private static String name(String sent) {
        String name =
                sent.replaceAll(".*[/\\\\]", "").replaceAll("\\p{Cntrl}", "").strip();
        return name.isEmpty() ? "photo" : name.substring(0, Math.min(80, name.length()));
    }

    private static String type(String name, byte[] b) {
        if (b.length > 3 && (b[0] & 0xff) == 0xff && (b[1] & 0xff) == 0xd8 && (b[2] & 0xff) == 0xff) {
            return "image/jpeg";
        }
        if (begins(b, 0, "\u0089PNG\r\n\u001a\n")) {
            return "image/png";
        }
        if (begins(b, 0, "RIFF") && begins(b, 8, "WEBP")) {
            return "image/webp";
        }
        throw new BadForm("Photo: " + name + " is no JPEG, PNG or WebP picture, whatever its name says");
    }

    private static boolean begins(byte[] b, int at, String magic) {
        byte[] m = magic.getBytes(StandardCharsets.ISO_8859_1);
        if (b.length < at + m.length) {
            return false;
        }
        for (int i = 0; i < m.length; i++) {
            if (b[at + i] != m[i]) {
                return false;
            }
        }
        return true;
    }
}
