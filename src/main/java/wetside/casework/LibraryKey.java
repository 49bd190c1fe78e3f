package wetside.casework;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.procedure.Procedure;
import wetside.run.Scenario;

/**
 * What a stored library belongs to: every value and tolerance of the machine as installed, how it is joined, what the kinds
 * declare, what all procedures do and read, and the code of the program. How anything is worded is no part of it.
 *
 * @param name file name without ending
 * @param hash of everything it was computed from
 */
public record LibraryKey(String name, String hash) {
    public static LibraryKey of(Casework casework, String build) {
        StringBuilder all = new StringBuilder(build).append('\n');
        Machine machine = casework.machine();
        all.append(machine.identity()).append(machine.joins());
        for (Component c : machine.components()) {
            part(c, all);
        }
        casework.routines().values().forEach(r -> routine(r, all));
        casework.askings().forEach(a -> asking(a, all));
        String hash = sha256(all.toString());
        return new LibraryKey(
                machine.identity().id().replaceAll("[^A-Za-z0-9-]", "_") + "-" + hash.substring(0, 16), hash);
    }

    /** What is done; how it is said changes no reading. */
    private static void routine(Scenario r, StringBuilder all) {
        all.append(r.name()).append(r.from()).append(r.steps()).append('\n');
    }

    /** What is read and how it is answered. */
    private static void asking(Asking a, StringBuilder all) {
        Procedure p = a.procedure();
        all.append(p.id()).append(p.routine()).append(p.reading()).append(p.answer());
        all.append(a.question().answering()).append('\n');
    }

    /** Of the causes of the same library that were simulated more closely. */
    LibraryKey closer() {
        return new LibraryKey(name + "-closer", hash);
    }

    private static void part(Component c, StringBuilder all) {
        all.append(c.id()).append(c.kind().name()).append(c.place());
        for (int i = 0; i < c.kind().parameters().size(); i++) {
            all.append(c.kind().parameters().get(i).name()).append(c.value(i)).append(c.spread(i));
        }
        for (Fault f : Kinds.of(c).faults()) {
            all.append(f.name()).append(f.rate());
            f.shifts()
                    .forEach(s -> all.append(s.parameter().name())
                            .append(s.way())
                            .append(s.slight())
                            .append(s.full()));
        }
        all.append('\n');
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
