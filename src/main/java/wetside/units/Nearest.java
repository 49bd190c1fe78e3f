package wetside.units;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The name that was probably meant, by the number of slips of the finger between two spellings. */
public final class Nearest {
    private static final int LONGEST = 60;

    private Nearest() {}

    /** The name nearest to what was written, if one is near at all. */
    public static Optional<String> to(String written, Collection<String> names) {
        return all(written, names).stream().findFirst();
    }

    /** Names near to what was written, nearest first, at most three. */
    public static List<String> all(String written, Collection<String> names) {
        String lower = lower(written);
        return names.stream()
                .filter(n -> isNear(lower, lower(n)))
                .sorted(Comparator.comparingInt((String n) -> distance(lower, lower(n)))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(3)
                .toList();
    }

    private static boolean isNear(String written, String name) {
        if (written.length() < 2 || written.length() > LONGEST) {
            return false;
        }
        return distance(written, name) <= Math.max(1, Math.min(name.length(), written.length()) / 3)
                || written.length() >= 4 && (name.contains(written) || written.contains(name) && name.length() >= 4);
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT).replace('_', ' ').replace('-', ' ');
    }

    /** Edits (insert, delete, replace, swap of neighbours) from a to b. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + same, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
