package wetside.casework;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;

/** Every cause a machine can have: each fault of each part, wrong settings, wrong installations, and none. */
public final class Candidates {
    /** Id of the cause that nothing is wrong. */
    public static final String HEALTHY = "works as it should";

    /** Id of what is done about it. */
    public static final String EXPLAIN = "explain";

    /** Share of calls in which nothing is wrong: about a third, common practice, no source. */
    private static final double HEALTHY_SHARE = 0.3;
    /** Minutes to explain to an owner that all is well. */
    private static final double EXPLAIN_MINUTES = 5;
    /**
     * What it costs to have told an owner wrongly that nothing is wrong, or that a part is: a second call, and trust. Assumed,
     * in minutes of the person; a part's price and work come on top.
     */
    private static final double WRONGLY_TOLD = 100;

    private Candidates() {}

    public static List<Candidate> of(Machine machine) {
        double sum = 0;
        for (Component c : machine.components()) {
            for (Fault f : Kinds.of(c).faults()) {
                sum += f.rate();
            }
        }
        List<Candidate> all = new ArrayList<>();
        all.add(healthy());
        for (Component c : machine.components()) {
            for (Fault f : Kinds.of(c).faults()) {
                all.add(candidate(c, f, f.rate() / sum * (1 - HEALTHY_SHARE)));
            }
        }
        return all;
    }

    private static Candidate healthy() {
        Effort explain = new Effort(EXPLAIN_MINUTES, 0, Set.of(), Hazard.NONE, Who.OWNER);
        Repair repair = new Repair(EXPLAIN, "tell the owner that this is normal, and why", explain, 1, WRONGLY_TOLD);
        Cause cause = new Cause(HEALTHY, "works as it should", HEALTHY_SHARE, "", repair);
        return new Candidate(cause, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Candidate candidate(Component c, Fault f, double weight) {
        Words.OfFault words = Words.of(c.kind().name()).faults().get(f.name());
        if (words == null) {
            throw new IllegalStateException(
                    "fault '" + f.name() + "' of kind '" + c.kind().name() + "' has no words");
        }
        Words.Remedy r = words.remedy();
        Set<String> panels = new LinkedHashSet<>(
                r.who().equals("owner") ? List.of() : c.place().behind());
        Who who = who(r.who());
        Hazard hazard = who == Who.OWNER ? Hazard.NONE : who == Who.ELECTRICIAN ? Hazard.LIVE : Hazard.INSIDE;
        Effort effort = new Effort(r.minutes(), r.money(), panels, hazard, who);
        double needless = r.money() > 0 ? WRONGLY_TOLD : 0;
        Repair repair = new Repair(c.id() + ": " + r.does(), c.name() + ": " + r.does(), effort, r.works(), needless);
        Cause cause = new Cause(c.id() + ": " + f.name(), c.name() + ": " + f.name(), weight, c.id(), repair);
        return new Candidate(cause, Optional.of(c.id()), Optional.of(c), Optional.of(f), Optional.of(words));
    }

    static Who who(String word) {
        return switch (word) {
            case "owner" -> Who.OWNER;
            case "technician" -> Who.TECHNICIAN;
            default -> Who.ELECTRICIAN;
        };
    }
}
