package wetside.department;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import wetside.diagnosis.learning.ClosedJob;
import wetside.shop.Outcome;

/** How much a closed job counts, and for what. */
final class Counting {
    /** A technician's word without proof and without a fault finding: right four times in five, assumed. */
    private static final double WORD = 0.8;

    private final Optional<Model> model;

    Counting(Optional<Model> model) {
        this.model = model;
    }

    /** Proved it counts whole; by belief it is shared; by word it counts in part, and left out not at all. */
    Counted of(Outcome o) {
        int month = month(o.closed());
        if (!o.leftOut().isEmpty()) {
            return new Counted(o, Counted.By.LEFT_OUT, new ClosedJob(o.complaint(), month, Map.of()));
        }
        if (model.isPresent() && model.get().proves(o.finding(), o.passed())) {
            return new Counted(o, Counted.By.PROOF, ClosedJob.proved(o.complaint(), month, o.finding()));
        }
        if (o.believed().containsKey(o.finding())) {
            return new Counted(o, Counted.By.BELIEF, ClosedJob.unproved(o.complaint(), month, o.believed()));
        }
        return new Counted(o, Counted.By.WORD, ClosedJob.unproved(o.complaint(), month, Map.of(o.finding(), WORD)));
    }

    /** Months since year 0, as experience counts them. */
    static int month(Instant at) {
        ZonedDateTime t = at.atZone(ZoneOffset.UTC);
        return 12 * t.getYear() + t.getMonthValue();
    }
}
