package wetside.cli;

import java.util.Optional;
import wetside.casework.Candidates;
import wetside.casework.Danger;
import wetside.casework.Installed;
import wetside.casework.Session;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;

/** A finding as text for people: what is known, the causes and why, and last, where the eye stays, what to do next. */
final class FindingText {
    private static final String NORMAL = "All of this is what a machine without fault shows here. If the owner has"
            + " noticed nothing else, say that it is normal, and why. The next step is for when there is more to it.";

    private final Console console;
    private final Session session;
    private final int wanted;

    /** @param wanted draws of every cause it should come to stand on */
    FindingText(Console console, Session session, int wanted) {
        this.console = console;
        this.session = session;
        this.wanted = wanted;
    }

    void whole(Installed installed, String complaint, ShopChoice shop) {
        console.line(heading(installed));
        shop.words().ifPresent(console::line);
        if (!complaint.isEmpty()) {
            console.text("", "“" + complaint + "”");
        }
        console.line("");
        new KnownText(console, session).print();
        Advice advice = session.advice();
        Optional<String> told = belief(advice);
        Optional<String> stop = Danger.saidTo(session.who(), complaint);
        if (stop.isPresent()) {
            stay(stop.get());
        } else {
            new StepText(console, session, false).print(advice.best(), told);
        }
    }

    private void stay(String words) {
        console.line("");
        console.text("Tell the owner first: ", "“" + words + "”");
        console.line("");
        console.text(
                "Next: ",
                "nothing is tried with it on the telephone, it stays off. Have it brought in or send a technician; then go on"
                        + " with --who technician");
    }

    /** What is believed after what is known; gives the repair that is told in full, once a cause stands out. */
    Optional<String> belief(Advice advice) {
        console.line("");
        CausesText causes = new CausesText(console, session);
        causes.print(wanted);
        causes.apart(advice);
        if (exitCode(session) == 0 && !session.isFound() && new KnownText(console, session).isOrdinary()) {
            console.line("");
            console.text("", NORMAL);
        }
        return new RemedyText(console, session).print();
    }

    static String heading(Installed installed) {
        return installed.machine().identity().title() + ", "
                + installed.machine().identity().making() + ", " + installed.fed();
    }

    /** Nothing found when all is most likely well. */
    static int exitCode(Session session) {
        Posterior.Ranked best = session.posterior().ranking().get(0);
        return best.id().equals(Candidates.HEALTHY) ? 0 : Wetside.FINDINGS;
    }

    static String percent(double share) {
        if (share > 0 && share < 0.005) {
            return "<1 %";
        }
        return share < 1 && share >= 0.995 ? ">99 %" : Math.round(100 * share) + " %";
    }
}
