package wetside.procedure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import wetside.blueprint.Reading;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.plant.Plant;
import wetside.run.Run;
import wetside.run.Scenario;

/**
 * All procedures of one machine, run on one plant after the other: each routine once, begun from the stored end of the
 * routine it follows, read by every procedure that belongs to it.
 */
public final class Trial {
    /** What an ohm-meter shows as open [Ω]. */
    public static final double OPEN = 2e7;

    private final Repertoire repertoire;
    private final List<Procedure> procedures;
    private final List<Stage> stages;
    private final Predicate<Procedure> wanted;
    private final double fineness;

    /** A routine, the procedures read in it (positions in {@link #procedures}), and what follows it. */
    private record Stage(Scenario scenario, List<Integer> read, List<Stage> next) {}

    public Trial(Procedures all, Machine machine) {
        repertoire = Repertoire.of(all, machine);
        procedures = repertoire.procedures();
        wanted = p -> true;
        fineness = 1;
        stages = stages("");
    }

    private Trial(Trial whole, Predicate<Procedure> wanted, double fineness) {
        repertoire = whole.repertoire;
        procedures = whole.procedures;
        this.wanted = wanted;
        this.fineness = fineness;
        stages = stages("");
    }

    /** The same procedures in the same order, but only some are read and only what leads to them is run. */
    public Trial reading(Collection<String> ids) {
        return new Trial(this, p -> ids.contains(p.id()), fineness);
    }

    /** The same, run in steps a share as long and as coarse. */
    public Trial finer(double share) {
        return new Trial(this, wanted, share);
    }

    private List<Stage> stages(String after) {
        List<Stage> found = new ArrayList<>();
        for (Scenario s : repertoire.routines().values()) {
            if (s.from().orElse("").equals(after)) {
                List<Stage> next = stages(s.name());
                List<Integer> read = IntStream.range(0, procedures.size())
                        .filter(i -> procedures.get(i).routine().equals(s.name()) && wanted.test(procedures.get(i)))
                        .boxed()
                        .toList();
                if (!read.isEmpty() || !next.isEmpty()) {
                    found.add(new Stage(s, read, next));
                }
            }
        }
        return found;
    }

    /** Whether the procedure at a position is read. */
    public boolean reads(int procedure) {
        return wanted.test(procedures.get(procedure));
    }

    /** What the machine can be taken through and asked. */
    public Repertoire repertoire() {
        return repertoire;
    }

    /** Those this machine's roles allow, in the order of the values. */
    public List<Procedure> procedures() {
        return procedures;
    }

    /** What every procedure would find on {@code machine}; words as their index, ohms capped at {@link #OPEN}. */
    public double[] values(Machine machine) {
        double[] values = new double[procedures.size()];
        Arrays.fill(values, Double.NaN);
        if (stages.isEmpty()) {
            return values;
        }
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        run.stepper().fineness(fineness);
        Plant.Snapshot start = run.plant().save();
        for (Stage s : stages) {
            go(s, run, start, values);
        }
        return values;
    }

    private void go(Stage stage, Run run, Plant.Snapshot from, double[] values) {
        run.plant().restore(from);
        run.begin();
        run.unwatch();
        List<Taker> takers = new ArrayList<>();
        for (int i : stage.read()) {
            Procedure p = procedures.get(i);
            p.reading().channel().ifPresent(c -> takers.add(new Taker(run.reading(c))));
            if (p.reading().channel().isEmpty()) {
                takers.add(null);
            }
        }
        takers.stream().filter(t -> t != null).forEach(run::watch);
        run.go(stage.scenario());
        for (int k = 0; k < stage.read().size(); k++) {
            int i = stage.read().get(k);
            values[i] = value(procedures.get(i), takers.get(k), run);
        }
        if (!stage.next().isEmpty()) {
            Plant.Snapshot end = run.plant().save();
            stage.next().forEach(s -> go(s, run, end, values));
        }
    }

    private static double value(Procedure p, Taker taker, Run run) {
        double raw = taker == null ? Math.min(OPEN, Terminals.ohms(p.reading(), run)) : taker.take(p.reading(), run);
        if (p.answer().isNumber() || Double.isNaN(raw)) {
            return raw;
        }
        return p.answer().word(raw);
    }

    /** Readings of the machine a procedure reads, for its unit and words. */
    public static Reading reading(Procedure p, Plant plant) {
        return new Run(plant).reading(p.reading().channel().orElseThrow());
    }
}
