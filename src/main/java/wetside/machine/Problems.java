package wetside.machine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers what is wrong in one file, so that all of it is told at once. */
public final class Problems {
    private static final int MOST = 500;
    private static final int WIDEST = 110;

    private final String file;
    private final List<String> lines;
    private final Set<Problem> found = new LinkedHashSet<>();

    Problems(String file, List<String> lines) {
        this.file = file;
        this.lines = lines;
    }

    String file() {
        return file;
    }

    /** The text of a line, counted from 1. */
    String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }

    void add(Mark mark, String path, String what, String maybe) {
        if (found.size() < MOST) {
            found.add(
                    new Problem(new Problem.Spot(file, mark.line(), mark.column()), path, what, maybe, excerpt(mark)));
        }
    }

    /** A stretch of one line; line and column count from 1. */
    record Mark(int line, int column, int length) {}

    public boolean none() {
        return found.isEmpty();
    }

    public List<Problem> all() {
        return found.stream().sorted(Problem.IN_FILE_ORDER).toList();
    }

    /** Does nothing when all is well. */
    public void throwIfAny() {
        if (!none()) {
            throw new BadFile(all());
        }
    }

    private List<String> excerpt(Mark mark) {
        if (mark.line() < 1 || mark.line() > lines.size()) {
            return List.of();
        }
        int from = Math.max(0, mark.column() - WIDEST + 30);
        List<String> shown = new ArrayList<>();
        for (int n = Math.max(1, mark.line() - 1); n <= Math.min(lines.size(), mark.line() + 1); n++) {
            shown.add(String.format("%5d | %s", n, cut(line(n), from)).stripTrailing());
            if (n == mark.line()) {
                int length = Math.max(1, Math.min(mark.length(), WIDEST - (mark.column() - 1 - from)));
                shown.add("      | " + " ".repeat(mark.column() - 1 - from) + "^".repeat(length));
            }
        }
        return shown;
    }

    private static String cut(String line, int from) {
        int[] shown = line.codePoints()
                .skip(from)
                .limit(WIDEST)
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .toArray();
        return new String(shown, 0, shown.length);
    }
}
