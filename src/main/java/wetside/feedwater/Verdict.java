package wetside.feedwater;

/**
 * What to think of a water in one respect.
 *
 * @param value  what was found, with its range
 * @param reason why that grade, with the limit and whose it is
 */
public record Verdict(String concern, Grade grade, String value, String reason) {
    /** How good. */
    public enum Grade {
        GOOD("good"),
        WATCH("watch"),
        ACT("act");

        private final String word;

        Grade(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
