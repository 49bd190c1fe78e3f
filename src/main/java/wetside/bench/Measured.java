package wetside.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.diagnosis.Observation;
import wetside.shop.Reading;
import wetside.shop.RegisteredMachine;
import wetside.units.Display;

/**
 * A reading of a job beside what was expected of it.
 *
 * @param rail null for words, and when nothing is expected
 */
public record Measured(Reading reading, RailBox rail) {
    public String expected() {
        return reading.expected() == null ? "" : reading.expected();
    }

    /** With what was expected when it was read; where that was not kept, what is expected now. */
    static List<Measured> all(
            Workshop w, RegisteredMachine machine, Optional<Casework> casework, List<Reading> all, Duration patience) {
        boolean kept = all.stream().allMatch(r -> r.expected() != null);
        Map<String, Expected> expected =
                kept || casework.isEmpty() ? Map.of() : w.models().expected(machine, patience);
        Map<String, Double> before = new HashMap<>();
        List<Measured> measured = new ArrayList<>();
        for (Reading r : all) {
            Reading full = r.expected() != null ? r : completed(r, expected.get(r.asked()));
            boolean left = r.phase().equals("left");
            measured.add(new Measured(
                    full, RailBox.of(full.low(), full.high(), full.value(), left ? before.get(r.asked()) : null)));
            if (!left && full.value() != null) {
                before.put(r.asked(), full.value());
            }
        }
        return measured;
    }

    private static Reading completed(Reading r, Expected e) {
        if (e == null) {
            return r;
        }
        try {
            Reading.Taken t = taken(e.asking(), r.phase(), r.said(), e, Display.METRIC);
            return new Reading(
                    r.id(),
                    r.phase(),
                    r.asked(),
                    r.said(),
                    t.verdict(),
                    r.who(),
                    r.at(),
                    r.entryId(),
                    t.expected(),
                    t.value(),
                    t.low(),
                    t.high());
        } catch (Answers.NotAnAnswer notOfThisMachine) {
            return r;
        }
    }

    /**
     * A reading as typed, with what is expected of it.
     *
     * @param e null when nothing is
     */
    static Reading.Taken taken(Asking asking, String phase, String typed, Expected e, Display units) {
        boolean bare = asking.options().isEmpty() && typed.matches("-?\\d+([.,]\\d+)?");
        String whole = bare
                ? typed.replace(',', '.') + " " + units.unit(asking.dimension()).symbol()
                : typed;
        Observation o = Answers.parse(asking, whole);
        String said = Answers.words(asking, o);
        boolean number = o.kind() == Observation.Kind.NUMBER;
        boolean band = number && e != null && e.isNumber() && !Double.isNaN(e.middle());
        return new Reading.Taken(
                phase,
                asking.question().id(),
                said,
                RailBox.verdict(e, o),
                e == null ? null : e.words(),
                number ? o.value() : null,
                band ? e.low() : null,
                band ? e.high() : null);
    }
}
