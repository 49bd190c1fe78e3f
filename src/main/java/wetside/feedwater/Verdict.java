package wetside.feedwater;

import java.util.Optional;

/**
 * What to think of a water in one respect.
 *
 * @param value  what was found, with its range
 * @param reason why that grade, with the limit and whose it is
 * @param gauge  the number that says most of it beside what is good; empty where there is none
 */
public record Verdict(String concern, Grade grade, String value, String reason, Optional<Gauge> gauge) {
    /**
     * A number on its axis.
     *
     * @param from where good begins; minus infinity where anything below will do
     * @param to   where good ends; infinity where anything above will do
     */
    public record Gauge(String words, double value, double from, double to) {}

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
