package wetside.procedure;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The files of {@code procedures/} inside the jar; {@code index.txt} lists them. */
final class ProcedureFiles {
    private static final String FOLDER = "/wetside/procedures/";

    private ProcedureFiles() {}

    static List<String> names() {
        return text("index.txt").lines().filter(l -> !l.isBlank()).toList();
    }

    static String text(String name) {
        try (InputStream in = ProcedureFiles.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the jar lacks " + FOLDER + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("cannot read " + FOLDER + name, e);
        }
    }
}
