package wetside.diagnosis;

/**
 * Something that can be asked, looked at or measured.
 *
 * @param id unique in a library
 * @param words the question in words
 * @param answering how it is answered
 * @param effort what finding out takes
 * @param reporter name of the error variable it shares with other questions about the same thing; its own id if none
 */
public record Question(String id, String words, Answering answering, Effort effort, String reporter) {
    public Question(String id, String words, Answering answering, Effort effort) {
        this(id, words, answering, effort, id);
    }

    /** The observation that an option was named. */
    public Observation choose(String option) {
        if (!(answering instanceof Answering.Choice choice)) {
            throw new IllegalArgumentException(id + " is answered by a number, not by \"" + option + "\"");
        }
        int index = choice.options().indexOf(option);
        if (index < 0) {
            throw new IllegalArgumentException(
                    id + " is not answered by \"" + option + "\"; it knows " + String.join(", ", choice.options()));
        }
        return Observation.choice(id, index);
    }

    /** The observation of a number, in the unit of the question. */
    public Observation read(double value) {
        if (!(answering instanceof Answering.Number) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(id + " cannot be answered by the number " + value);
        }
        return Observation.number(id, value);
    }

    /**
     * Whether a reading differs from that of the same machine without a cause by more than so many deviations of its
     * instrument; a word by being another.
     */
    public boolean differs(float whole, float here, double deviations) {
        double least = answering instanceof Answering.Number n ? deviations * Math.sqrt(n.variance(whole)) : 0;
        return Float.isNaN(whole) != Float.isNaN(here) || Math.abs(here - whole) > least;
    }
}
