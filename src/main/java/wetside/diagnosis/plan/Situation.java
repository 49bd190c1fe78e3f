package wetside.diagnosis.plan;

import java.util.HashSet;
import java.util.Set;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;

/**
 * Who stands at the machine, and in what state it is.
 *
 * @param who the person
 * @param panelsOff panels already off
 * @param rates what things cost this person
 */
public record Situation(Who who, Set<String> panelsOff, Rates rates) {
    /** What a technician needs to learn one bit, on simulated jobs. */
    private static final double MINUTES_A_BIT = 8;

    public Situation {
        panelsOff = Set.copyOf(panelsOff);
    }

    public static Situation of(Who who) {
        return new Situation(who, Set.of(), Rates.USUAL);
    }

    public Situation with(Rates other) {
        return new Situation(who, panelsOff, other);
    }

    /** With the panels off that must have come off for what was observed; a panel off stays off. */
    public Situation after(Library library, Observations observations) {
        Set<String> off = new HashSet<>(panelsOff);
        for (Observation observation : observations) {
            if (observation.kind() == Observation.Kind.NUMBER || observation.kind() == Observation.Kind.CHOICE) {
                off.addAll(library.questions()
                        .get(library.question(observation.about()))
                        .effort()
                        .panels());
            } else if (observation.kind() == Observation.Kind.STILL_BAD) {
                library.causes().stream()
                        .filter(c -> c.repair().id().equals(observation.about()))
                        .findFirst()
                        .ifPresent(c -> off.addAll(c.repair().effort().panels()));
            }
        }
        return new Situation(who, off, rates);
    }

    /**
     * Cost of handing the job over while the cause is known so badly [per bit]: whoever comes to an owner has to find out
     * at the machine, and with which parts to come. A technician hands over all that was found.
     */
    public double handover() {
        return who == Who.OWNER ? MINUTES_A_BIT * rates.perMinute() : 0;
    }

    /** Cost of an effort now, panels still on included. */
    public double cost(Effort effort) {
        return rates.of(effort)
                + effort.panels().stream()
                        .filter(panel -> !panelsOff.contains(panel))
                        .mapToDouble(rates::panel)
                        .sum();
    }

    /** Cost of a question now: however quickly it is answered, putting it takes a minute. */
    public double asking(Effort effort) {
        return Math.max(rates.perMinute(), cost(effort));
    }

    /** Minutes of an effort now, panels still on included. */
    public double minutes(Effort effort) {
        return effort.minutes()
                + effort.panels().stream()
                        .filter(panel -> !panelsOff.contains(panel))
                        .mapToDouble(rates::panelMinutes)
                        .sum();
    }
}
