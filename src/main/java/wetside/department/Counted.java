package wetside.department;

import wetside.diagnosis.learning.ClosedJob;
import wetside.shop.Outcome;

/**
 * A closed job and how much it counts.
 *
 * @param by     why so much
 * @param closed what it says of causes
 */
public record Counted(Outcome outcome, By by, ClosedJob closed) {
    /** What a job counts by. */
    public enum By {
        PROOF("proved"),
        BELIEF("by what was believed"),
        WORD("by word, not proved"),
        LEFT_OUT("left out");

        private final String words;

        By(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    boolean counts() {
        return by != By.LEFT_OUT;
    }
}
