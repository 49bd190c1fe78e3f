package wetside.trade;

import java.util.function.UnaryOperator;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;
import wetside.run.Run;

/** A machine on the bench, the first one if no other is named: what a technician does to it and sees. Values in SI. */
final class Bench {
    private static final Machine TWIN =
            MachineFile.bundled("twin-boiler-lever", Kinds.declarations()).newest();

    private final Run run;

    private Bench(Machine machine) {
        run = new Run(Plant.of(Kinds.blueprint(machine)));
    }

    /** Drawing from its tank, switched off, cold. */
    @SafeVarargs
    static Bench onTank(UnaryOperator<Machine>... changes) {
        return new Bench(changed(TWIN, changes));
    }

    /** Another machine that comes with Wetside, switched off, cold. */
    @SafeVarargs
    static Bench of(String name, String revision, UnaryOperator<Machine>... changes) {
        Machine machine = MachineFile.bundled(name, Kinds.declarations()).machine(revision);
        return new Bench(changed(machine, changes));
    }

    /** As built before the change of the safety valve. */
    @SafeVarargs
    static Bench olderOnTank(UnaryOperator<Machine>... changes) {
        Machine older =
                MachineFile.bundled("twin-boiler-lever", Kinds.declarations()).machine("A");
        return new Bench(changed(older, changes));
    }

    /** Plumbed in, switched off, cold. */
    @SafeVarargs
    static Bench onMains(UnaryOperator<Machine>... changes) {
        Machine open = set("cock", "position at start", 1).apply(TWIN);
        return new Bench(changed(set("selector", "position at start", 1).apply(open), changes));
    }

    /** Any machine that comes with Wetside, newest revision, installed as its file says, switched off, cold. */
    @SafeVarargs
    static Bench of(String machine, UnaryOperator<Machine>... changes) {
        return new Bench(
                changed(MachineFile.bundled(machine, Kinds.declarations()).newest(), changes));
    }

    /** A machine of one making, switched off, cold. */
    static Bench on(Machine machine) {
        return new Bench(machine);
    }

    private static Machine changed(Machine machine, UnaryOperator<Machine>[] changes) {
        Machine m = machine;
        for (UnaryOperator<Machine> change : changes) {
            m = change.apply(m);
        }
        return m;
    }

    static UnaryOperator<Machine> set(String id, String parameter, double si) {
        return m -> {
            Component c = m.component(id);
            return m.with(c.with(c.kind().parameter(parameter).orElseThrow(), si));
        };
    }

    static UnaryOperator<Machine> broken(String id, String fault, double severity) {
        return m -> {
            Component c = m.component(id);
            Fault f = Kinds.of(c).faults().stream()
                    .filter(candidate -> candidate.name().equals(fault))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(c + " has no fault " + fault));
            return m.with(f.on(c, severity));
        };
    }

    Bench turn(String handle, String position) {
        run.move(handle, position);
        return this;
    }

    Bench on() {
        return turn("power-switch.switch", "on").after(2);
    }

    Bench off() {
        return turn("power-switch.switch", "off").after(2);
    }

    Bench after(double seconds) {
        run.pass(seconds);
        return this;
    }

    /** Blind disc in, lever up, a while. */
    Bench blind() {
        return turn("group.holds", "blind disc").turn("lever.position", "brew").after(15);
    }

    /** Nothing in the group, lever up, until the flow stands. */
    Bench flush() {
        return turn("group.holds", "nothing").turn("lever.position", "brew").after(4);
    }

    double read(String reading) {
        return run.plant().read(run.reading(reading));
    }

    /** Word of a reading that is one of several words. */
    String word(String reading) {
        return run.reading(reading).options().get((int) read(reading));
    }

    double bar(String reading) {
        return read(reading) / 1e5;
    }

    double celsius(String reading) {
        return read(reading) - 273.15;
    }

    double slot(String name) {
        return run.plant().slot(name);
    }

    /** What a reading grows by in a time. */
    double growth(String reading, double seconds) {
        double before = read(reading);
        after(seconds);
        return read(reading) - before;
    }

    /** Time until a reading is above something, no longer than {@code atMost} [s]. */
    double until(String reading, double above, double atMost) {
        double start = run.time();
        while (read(reading) < above && run.time() - start < atMost) {
            after(0.5);
        }
        return run.time() - start;
    }

    Run run() {
        return run;
    }
}
