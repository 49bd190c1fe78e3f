package wetside.diagnosis;

import java.util.HashSet;
import java.util.Set;

/**
 * What doing something takes, without the panels' own minutes (those depend on what is off already).
 *
 * @param minutes working and waiting time of the person [min]
 * @param money parts and materials
 * @param panels panels that must be off
 * @param hazard the worst that could hurt
 * @param who the least qualified person who may do it
 */
public record Effort(double minutes, double money, Set<String> panels, Hazard hazard, Who who) {
    public Effort {
        if (!(minutes >= 0) || !(money >= 0)) {
            throw new IllegalArgumentException("minutes and money cannot be negative: " + minutes + ", " + money);
        }
        panels = Set.copyOf(panels);
    }

    /** An effort of minutes only, open to everybody. */
    public static Effort minutes(double minutes) {
        return new Effort(minutes, 0, Set.of(), Hazard.NONE, Who.OWNER);
    }

    /** Whether this person may do it: qualified, allowed near the hazard, and no owner behind a panel. */
    public boolean allowed(Who person) {
        return person.covers(who) && person.covers(hazard.least()) && (person != Who.OWNER || panels.isEmpty());
    }

    /** Both, one after the other. */
    public Effort and(Effort other) {
        Set<String> all = new HashSet<>(panels);
        all.addAll(other.panels);
        Hazard worse = hazard.compareTo(other.hazard) >= 0 ? hazard : other.hazard;
        return new Effort(
                minutes + other.minutes, money + other.money, all, worse, who.covers(other.who) ? who : other.who);
    }
}
