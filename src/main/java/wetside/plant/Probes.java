package wetside.plant;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.CurrentPlan;

/** The probes of a current plan as arrays: those that live on voltage, and those that see a resistance. */
final class Probes {
    /** What a live probe shows. */
    enum Sort {
        POWER,
        AMPS,
        VOLTAGE,
        SHARE
    }

    final Sort[] sorts;
    final int[] slots;
    /** Element read, or -1. */
    final int[] elements;
    /** Nodes between which a voltage is read; those of the element otherwise. */
    final int[] from;

    final int[] to;
    final double[] least;
    final int[] seenSlots;
    final int[] seenFrom;
    final int[] seenTo;

    Probes(CurrentPlan plan, Wiring wiring) {
        List<CurrentPlan.Probe> live = new ArrayList<>();
        List<CurrentPlan.Seen> seen = new ArrayList<>();
        for (CurrentPlan.Probe probe : plan.probes()) {
            if (probe instanceof CurrentPlan.Seen s) {
                seen.add(s);
            } else {
                live.add(probe);
            }
        }
        int count = live.size();
        sorts = new Sort[count];
        slots = new int[count];
        elements = new int[count];
        from = new int[count];
        to = new int[count];
        least = new double[count];
        for (int p = 0; p < count; p++) {
            CurrentPlan.Probe probe = live.get(p);
            slots[p] = probe.slot();
            if (probe instanceof CurrentPlan.Power e) {
                element(p, Sort.POWER, e.element(), wiring);
            } else if (probe instanceof CurrentPlan.Amps e) {
                element(p, Sort.AMPS, e.element(), wiring);
            } else if (probe instanceof CurrentPlan.Voltage v) {
                voltage(p, Sort.VOLTAGE, wiring.nodeOf(v.from()), wiring.nodeOf(v.to()), 0);
            } else if (probe instanceof CurrentPlan.Share s) {
                voltage(p, Sort.SHARE, wiring.nodeOf(s.from()), wiring.nodeOf(s.to()), s.least());
            }
        }
        seenSlots = seen.stream().mapToInt(CurrentPlan.Seen::slot).toArray();
        seenFrom = seen.stream().mapToInt(s -> wiring.nodeOf(s.from())).toArray();
        seenTo = seen.stream().mapToInt(s -> wiring.nodeOf(s.to())).toArray();
    }

    private void element(int p, Sort sort, int element, Wiring wiring) {
        sorts[p] = sort;
        elements[p] = element;
        from[p] = wiring.from[element];
        to[p] = wiring.to[element];
    }

    private void voltage(int p, Sort sort, int a, int b, double volts) {
        sorts[p] = sort;
        elements[p] = -1;
        from[p] = a;
        to[p] = b;
        least[p] = volts;
    }
}
