package wetside.machine;

import java.util.List;
import java.util.stream.Collectors;

/** A user's file that cannot be used, with everything that is wrong in it. Nothing of it has been loaded. */
public final class BadFile extends RuntimeException {
    private static final int SHOWN = 50;

    private final transient List<Problem> problems;

    public BadFile(List<Problem> problems) {
        super(text(problems), null, false, false);
        this.problems = List.copyOf(problems);
    }

    /** A file that is wrong as a whole. */
    public static BadFile whole(String file, String what, String maybe) {
        return new BadFile(List.of(new Problem(new Problem.Spot(file, 0, 0), "", what, maybe, List.of())));
    }

    public List<Problem> problems() {
        return problems;
    }

    private static String text(List<Problem> problems) {
        String all = problems.stream().limit(SHOWN).map(Problem::toString).collect(Collectors.joining("\n"));
        return problems.size() <= SHOWN ? all : all + "\n… and " + (problems.size() - SHOWN) + " more";
    }
}
