package wetside.cli;

import wetside.blueprint.Reading;
import wetside.units.Display;

/** Names and values of a run as people say them. */
final class RunText {
    private RunText() {}

    /** "pump gauge" for {@code pump-gauge.needle}, "lever position" for {@code lever.position}. */
    static String words(String channel) {
        return channel.replace('-', ' ')
                .replace(".needle", "")
                .replace(".display", "")
                .replace('.', ' ');
    }

    static String value(Reading r, double v) {
        return r.isChoice() ? r.options().get((int) v) : Display.METRIC.print(v, r.dimension());
    }
}
