package wetside.bench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import wetside.run.Action;
import wetside.run.Scenario;

/** What a run still has to be taken through, done in pieces short enough to be touched between them. */
final class Script {
    /** Longest piece [s of the run]. */
    private static final double PIECE = 1;

    private final Deque<Action> left = new ArrayDeque<>();

    /** Whoever does what is written. */
    interface Hands {
        void set(String handle, String value);

        void pass(double seconds);

        /** Goes on until something is so, at most as long as the action says; answers how long it took [s]. */
        double until(Action.Until action);

        void mark(String name);
    }

    void write(List<Scenario> chain) {
        chain.forEach(s -> left.addAll(s.steps()));
    }

    void clear() {
        left.clear();
    }

    boolean isDone() {
        return left.isEmpty();
    }

    /** Does one piece; what takes longer is put back shortened. */
    void follow(Hands hands) {
        Action action = left.poll();
        if (action instanceof Action.Move m) {
            hands.set(m.handle(), m.value());
        } else if (action instanceof Action.Wait w) {
            double now = Math.min(PIECE, w.seconds());
            hands.pass(now);
            if (w.seconds() - now > 1e-6) {
                left.push(new Action.Wait(w.seconds() - now));
            }
        } else if (action instanceof Action.Until u) {
            double now = Math.min(PIECE, u.atMost());
            double gone = hands.until(new Action.Until(u.reading(), u.test(), u.value(), now));
            if (gone > now - 1e-6 && u.atMost() - gone > 1e-6) {
                left.push(new Action.Until(u.reading(), u.test(), u.value(), u.atMost() - gone));
            }
        } else if (action instanceof Action.Mark m) {
            hands.mark(m.name());
        }
    }
}
