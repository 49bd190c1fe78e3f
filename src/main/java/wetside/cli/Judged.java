package wetside.cli;

import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.judging.Verdict;

/**
 * How the diagnosis of one machine did.
 *
 * @param wanted  jobs that were to be played
 * @param draws   of each cause
 */
record Judged(Installed installed, Casework casework, Verdict verdict, int wanted, int draws, long seed) {
    boolean isIncomplete() {
        return jobs() < wanted;
    }

    /** Whether a job could not be played. */
    boolean isFailed() {
        return !verdict.notPlayed().isEmpty();
    }

    int jobs() {
        return verdict.played().size();
    }

    String title() {
        return installed.machine().identity().title();
    }
}
