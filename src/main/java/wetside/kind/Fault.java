package wetside.kind;

import java.util.List;
import wetside.machine.Component;
import wetside.machine.Parameter;

/**
 * One way in which a part goes wrong or is set wrongly: which parameters move and how far. Applied to a component it gives
 * a changed copy; nothing else in the product knows the word.
 *
 * @param name      short trade words, e.g. "held open by grit"; unique in its kind
 * @param sort      what sort of cause it is
 * @param shifts    what moves
 * @param rate      how often, per million hours of ownership (powered or not) for one such part; ASSUMED until a shop's
 *                  own records replace it
 */
public record Fault(String name, Sort sort, List<Shift> shifts, double rate) {
    /** Sorts of cause. */
    public enum Sort {
        FAULT,
        WRONG_SETTING,
        WRONG_INSTALLATION
    }

    /** How a severity from 0 (just noticeable) to 1 (complete) moves a parameter. */
    public enum Way {
        /** From {@code slight} to {@code full} on a straight line, in SI. */
        SET,
        /** The whole value times a factor from {@code slight} to {@code full}, on a straight line. */
        TIMES,
        /** What it is meant to be, wherever within its tolerance this one lies, times such a factor. */
        TIMES_MEANT,
        /** The whole value plus something from {@code slight} to {@code full}, in SI. */
        PLUS,
        /** Like SET, on a logarithmic scale. */
        SET_LOG
    }

    /** One parameter's movement. */
    public record Shift(Parameter parameter, Way way, double slight, double full) {
        double apply(double whole, double meant, double severity) {
            return switch (way) {
                case SET -> slight + (full - slight) * severity;
                case TIMES -> whole * (slight + (full - slight) * severity);
                case TIMES_MEANT -> meant * (slight + (full - slight) * severity);
                case PLUS -> whole + slight + (full - slight) * severity;
                case SET_LOG -> slight * Math.pow(full / slight, severity);
            };
        }
    }

    /** On a component that is as it is meant to be. */
    public Component on(Component whole, double severity) {
        return on(whole, whole, severity);
    }

    /** On one somewhere within its tolerances. */
    public Component on(Component whole, Component meant, double severity) {
        Component broken = whole;
        for (Shift s : shifts) {
            double moved = s.apply(whole.get(s.parameter()), meant.get(s.parameter()), severity);
            double cut = Math.max(s.parameter().min(), Math.min(s.parameter().max(), moved));
            broken = broken.with(s.parameter(), cut);
        }
        return broken;
    }

    public static Fault of(String name, double rate, Shift... shifts) {
        return new Fault(name, Sort.FAULT, List.of(shifts), rate);
    }

    public static Fault wrongSetting(String name, double rate, Shift... shifts) {
        return new Fault(name, Sort.WRONG_SETTING, List.of(shifts), rate);
    }

    public static Fault wrongInstallation(String name, double rate, Shift... shifts) {
        return new Fault(name, Sort.WRONG_INSTALLATION, List.of(shifts), rate);
    }

    public static Shift set(Parameter p, double slight, double full) {
        return new Shift(p, Way.SET, slight, full);
    }

    public static Shift set(Parameter p, double value) {
        return new Shift(p, Way.SET, value, value);
    }

    public static Shift times(Parameter p, double slight, double full) {
        return new Shift(p, Way.TIMES, slight, full);
    }

    public static Shift timesMeant(Parameter p, double slight, double full) {
        return new Shift(p, Way.TIMES_MEANT, slight, full);
    }

    public static Shift plus(Parameter p, double slight, double full) {
        return new Shift(p, Way.PLUS, slight, full);
    }

    public static Shift log(Parameter p, double slight, double full) {
        return new Shift(p, Way.SET_LOG, slight, full);
    }
}
