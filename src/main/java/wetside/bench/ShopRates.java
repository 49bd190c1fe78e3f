package wetside.bench;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import wetside.casework.Session;
import wetside.department.Practice;
import wetside.diagnosis.Library;

/**
 * How often causes are in this shop, for one fault finding.
 *
 * @param practice  jobs closed on this model
 * @param complaint the sign kept at intake while no answer says it, "" for none
 * @param on        whether they are used
 * @param now       what jobs are old by
 */
record ShopRates(Practice practice, String complaint, boolean on, Instant now) {
    /** Rates that differ less are the same to anybody. */
    private static final double SLIGHT = 1.25;

    /** What sessions made with these rates are kept under. */
    Object key() {
        return counts() ? List.of(practice.edition(), complaint, now.truncatedTo(ChronoUnit.DAYS)) : "shipped";
    }

    private boolean counts() {
        return on && practice.counting() > 0;
    }

    /** The very same library where no job counts or the shop's rates are not wanted. */
    Library on(Library library) {
        return counts() ? practice.on(library, complaint, now) : library;
    }

    /** What stands under the causes. */
    FaultView.Rates view() {
        int n = practice.counting();
        long shipped = Math.round(practice.experience().strength());
        String jobs = n == 1 ? "1 job" : n + " jobs";
        String words = n == 0
                ? "Shipped rates: no closed job of this shop on this model counts yet."
                : on
                        ? "How often each fails: shipped rates count as " + shipped + " jobs, beside " + jobs
                                + " of this shop."
                        : "Shipped rates only; " + jobs + " of this shop left aside.";
        return new FaultView.Rates(words, n > 0, on);
    }

    /** How often a cause is before any answer; empty where shop and shipped rates make no difference worth a line. */
    static Optional<FaultView.Line> reason(Session session, int position) {
        return session.often(position).flatMap(o -> {
            double ratio = Math.max(o.here() / o.shipped(), o.shipped() / o.here());
            boolean more = o.here() > o.shipped();
            return ratio < SLIGHT
                    ? Optional.empty()
                    : Optional.of(new FaultView.Line(
                            more ? "+" : "−",
                            (more ? "more" : "less") + " often here: " + per(o.here()) + " of jobs, shipped "
                                    + per(o.shipped()),
                            ratio >= 10 ? "strong" : ratio >= 3 ? "some" : "slight"));
        });
    }

    private static String per(double share) {
        return Spoken.number(100 * share, share < 0.095 ? 0.1 : 1) + " %";
    }
}
