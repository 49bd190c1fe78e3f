package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import wetside.casework.Installed;
import wetside.machine.Machine;
import wetside.map.Measured;
import wetside.run.Action;
import wetside.run.Run;

/** The machine that is touched, broken as it is, and beside it the same machine sound where that is wanted. */
final class Twins {
    private final Machine whole;
    private final List<String> broken = new ArrayList<>();
    private Measured measured;
    private Run sound;

    Twins(Machine whole) {
        this.whole = whole;
        measured = Measured.cold(whole);
        twin().begin();
    }

    Run twin() {
        return measured.run();
    }

    Measured measured() {
        return measured;
    }

    /** Null while none runs. */
    Run sound() {
        return sound;
    }

    List<String> broken() {
        return List.copyOf(broken);
    }

    /** @param words as {@link Installed#broken} takes them */
    void breakPart(String words, boolean compare) {
        if (compare && sound == null) {
            sound = Measured.cold(whole).run();
            take(sound, twin());
        }
        broken.add(words);
        replace();
    }

    void mend() {
        broken.clear();
        sound = null;
        replace();
    }

    /** The same water, heat and contacts in a machine with other parts. */
    private void replace() {
        Measured next = Measured.cold(machine());
        take(next.run(), twin());
        measured = next;
    }

    private Machine machine() {
        Machine machine = whole;
        for (String b : broken) {
            machine = Installed.broken(machine, b);
        }
        return machine;
    }

    private static void take(Run to, Run from) {
        to.plant().restore(from.plant().save());
        to.stepper().time(from.time());
        to.stepper().moved();
    }

    void afresh() {
        measured = Measured.cold(machine());
        twin().begin();
        sound = sound == null ? null : Measured.cold(whole).run();
    }

    void move(String handle, String value) {
        twin().move(handle, value);
        if (sound != null) {
            sound.move(handle, value);
        }
    }

    void pass(double seconds) {
        twin().pass(seconds);
        alongside();
    }

    /** Answers how long it took [s]. */
    double until(Action.Until action) {
        double before = twin().time();
        twin().go(action);
        alongside();
        return twin().time() - before;
    }

    private void alongside() {
        if (sound != null && twin().time() - sound.time() > 1e-9) {
            sound.pass(twin().time() - sound.time());
        }
    }
}
