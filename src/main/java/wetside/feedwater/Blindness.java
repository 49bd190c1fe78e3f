package wetside.feedwater;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wetside.analysis.Ranged;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.Spread;
import wetside.plant.Plant;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Draws;
import wetside.run.Run;
import wetside.run.Scenario;

/**
 * From which conductivity at 25 °C down a machine's level probe no longer sees its water [S/m]: found by switching the twin
 * on with ever purer water until the fill no longer ends by itself.
 *
 * @param clean  with a clean probe, over machines within tolerances
 * @param filmed the same machine with a film of scale on its probe, middling for that fault
 */
public record Blindness(Ranged clean, double filmed) {
    private static final double PUREST = 0.5e-4;
    private static final double SALTIEST = 3000e-4;
    private static final int MACHINES = 8;
    private static final long SEED = 7;

    /** Longer than the longest any board waits before it gives a fill up. */
    private static final double WATCHED = 420;

    /** A boiler this full has been filled past its probe. */
    private static final double OVERFULL = 0.93;

    /** Empty where the machine has no level probe. */
    public static Optional<Blindness> of(Installed installed) {
        Machine machine = installed.machine();
        if (machine.inRole("level probe").isEmpty()) {
            return Optional.empty();
        }
        Repertoire repertoire = Repertoire.of(Procedures.bundled(), machine);
        if (!repertoire.routines().containsKey("switched on")) {
            return Optional.empty();
        }
        List<Scenario> on = repertoire.leadingTo("switched on");
        double middle = threshold(machine, on, PUREST, SALTIEST);
        double[] all = new double[MACHINES];
        Draws draws = new Draws(machine, SEED);
        for (int k = 0; k < MACHINES; k++) {
            all[k] = threshold(draws.machine(k), on, middle / 4, middle * 4);
        }
        Arrays.sort(all);
        Ranged clean = new Ranged(Math.min(middle, all[0]), middle, Math.max(middle, all[MACHINES - 1]), "");
        String probe = machine.inRole("level probe").map(Component::id).orElseThrow();
        Machine scaled = Installed.broken(machine, probe + ":scaled=0.5");
        return Optional.of(new Blindness(clean, threshold(scaled, on, PUREST, SALTIEST)));
    }

    /** Between the two ends, or beyond one of them where the fill ends, or does not, everywhere between. */
    private static double threshold(Machine machine, List<Scenario> on, double purest, double saltiest) {
        if (sees(machine, on, purest)) {
            return purest;
        }
        if (!sees(machine, on, saltiest)) {
            return Double.POSITIVE_INFINITY;
        }
        double blind = Math.log(purest);
        double seeing = Math.log(saltiest);
        while (seeing - blind > 0.04) {
            double middle = (blind + seeing) / 2;
            if (sees(machine, on, Math.exp(middle))) {
                seeing = middle;
            } else {
                blind = middle;
            }
        }
        return Math.exp(seeing);
    }

    /** Whether the fill ends by itself after switching {@code on}, the boiler not overfull. */
    public static boolean sees(Machine machine, List<Scenario> on, double conductivity) {
        Machine fed = Installation.UNKNOWN
                .with(Installation.Fact.CONDUCTIVITY, new Installation.Known(conductivity, Spread.EXACT))
                .around(machine);
        Run run = new Run(Plant.of(Kinds.blueprint(fed)));
        run.begin();
        on.forEach(run::go);
        run.pass(WATCHED);
        String boiler = fed.inRole("steam boiler").map(Component::id).orElse("");
        boolean overfull = !boiler.isEmpty() && run.plant().slot(boiler + ".level") > OVERFULL;
        return !overfull && !message(run).matches("filling.*|.*gave up");
    }

    /** What the board says; empty where none says anything. */
    private static String message(Run run) {
        return run.plant().readings().values().stream()
                .filter(r -> r.channel().endsWith(".message"))
                .map(r -> r.options().get((int) run.plant().read(r)))
                .findFirst()
                .orElse("");
    }

    /** What a water does before this probe. */
    public enum Sight {
        SEEN,
        DOUBTFUL,
        BLIND
    }

    public Sight sight(Ranged conductivity) {
        if (conductivity.high() < clean.low()) {
            return Sight.BLIND;
        }
        return conductivity.low() > clean.high() ? Sight.SEEN : Sight.DOUBTFUL;
    }
}
