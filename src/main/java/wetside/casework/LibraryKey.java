package wetside.casework;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;

/**
 * What a stored library belongs to: every value and tolerance of the machine as installed, how it is joined, what the kinds
 * declare, all procedures, and the build of the program.
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
        casework.askings().forEach(a -> all.append(a.procedure()).append('\n'));
        String hash = sha256(all.toString());
        return new LibraryKey(
                machine.identity().id().replaceAll("[^A-Za-z0-9-]", "_") + "-" + hash.substring(0, 16), hash);
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
