package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import wetside.machine.Wording;
import wetside.run.Action;
import wetside.run.Run;
import wetside.run.Scenario;
import wetside.units.Dimension;
import wetside.units.NotAQuantity;
import wetside.units.Quantity;

/** A moment of a scenario: one of its marks, or a time from its beginning. */
final class Moment {
    private final String words;

    /** @param words null for the second mark, or the only one: routines first mark that something begins */
    Moment(String words) {
        this.words = words;
    }

    /** Goes through the chain and stops in its last scenario when the moment has come. */
    void reach(Run run, List<Scenario> chain) {
        Scenario last = chain.get(chain.size() - 1);
        List<String> marks = marks(last);
        String mark = words == null && !marks.isEmpty() ? marks.get(Math.min(1, marks.size() - 1)) : words;
        double seconds = mark == null || marks.contains(mark) ? Double.POSITIVE_INFINITY : seconds(mark, last, marks);
        chain.subList(0, chain.size() - 1).forEach(run::go);
        double end = run.time() + seconds;
        for (Action action : last.steps()) {
            run.go(shortened(action, end - run.time()));
            if (run.time() >= end - 1e-9
                    || action instanceof Action.Mark m && m.name().equals(mark)) {
                return;
            }
        }
        if (Double.isFinite(seconds)) {
            run.pass(end - run.time());
        }
    }

    private static List<String> marks(Scenario scenario) {
        List<String> names = new ArrayList<>();
        for (Action a : scenario.steps()) {
            if (a instanceof Action.Mark m) {
                names.add(m.name());
            }
        }
        return names;
    }

    private static double seconds(String text, Scenario scenario, List<String> marks) {
        try {
            return Quantity.parse(text, Dimension.TIME).si();
        } catch (NotAQuantity e) {
            String near = Wording.nearest(text, marks);
            throw new BadArgument("--at: '" + text + "' is no time and no mark of '" + scenario.name() + "'"
                    + (marks.isEmpty() ? "" : "; its marks are " + Wording.inWords(marks))
                    + (near.isEmpty() ? "" : ". Maybe " + near + "."));
        }
    }

    private static Action shortened(Action action, double left) {
        if (action instanceof Action.Wait w && w.seconds() > left) {
            return new Action.Wait(left);
        }
        if (action instanceof Action.Until u && u.atMost() > left) {
            return new Action.Until(u.reading(), u.test(), u.value(), left);
        }
        return action;
    }
}
