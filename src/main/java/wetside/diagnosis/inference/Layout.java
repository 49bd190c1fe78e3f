package wetside.diagnosis.inference;

import java.util.List;
import java.util.stream.IntStream;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Question;

/** Where numbers and options stand in a row of a library, and where sums over draws are kept for each. */
final class Layout {
    /** Questions in a row. */
    final int stride;
    /** Places of the questions answered by numbers. */
    final int[] numbers;
    /** The number's place among the numbers, by question. */
    final int[] numberAt;
    /** Places of the questions answered by options. */
    final int[] choices;
    /** Where the sums of a question's options begin, by question; one more follows for what has no value. */
    final int[] optionsAt;
    /** How many options a question has, by question. */
    final int[] options;

    final int sums;

    Layout(List<Question> questions) {
        stride = Math.max(1, questions.size());
        numbers = IntStream.range(0, questions.size())
                .filter(q -> questions.get(q).answering() instanceof Answering.Number)
                .toArray();
        choices = IntStream.range(0, questions.size())
                .filter(q -> questions.get(q).answering() instanceof Answering.Choice)
                .toArray();
        numberAt = new int[stride];
        for (int i = 0; i < numbers.length; i++) {
            numberAt[numbers[i]] = i;
        }
        optionsAt = new int[stride];
        options = new int[stride];
        int next = 0;
        for (int q : choices) {
            options[q] =
                    ((Answering.Choice) questions.get(q).answering()).options().size();
            optionsAt[q] = next;
            next += options[q] + 1;
        }
        sums = next;
    }
}
