package wetside.blueprint;

import java.util.List;
import wetside.units.Dimension;

/**
 * Something a person can see, hear, feel or measure on the running machine.
 *
 * @param channel   {@code component.what}, e.g. {@code pump-gauge.needle}
 * @param dimension of a number; NUMBER when it is one of {@code options}
 * @param options   empty for a number; otherwise the words, and {@code value} gives their index
 * @param value     from the state array; SI
 * @param error     instrument standard deviation, absolute [SI]; 0 for options
 */
public record Reading(String channel, Dimension dimension, List<String> options, Value value, double error) {
    /** Reads the state. */
    @FunctionalInterface
    public interface Value {
        double at(double[] x);
    }

    public boolean isChoice() {
        return !options.isEmpty();
    }
}
