package wetside.kind;

import static wetside.kind.Fault.plus;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/**
 * Proportional-integral regulator with a display, a two-wire sensor input and a transistor output that passes on the
 * voltage of its terminal {@code feed} in pulses.
 */
public final class TemperatureController implements Kind {
    static final Parameter SET_POINT = Parameter.setting(
            "set point", Dimension.TEMPERATURE, 366.15, 273.15, 433.15, Spread.EXACT, "temperature it holds");
    static final Parameter SECOND = Parameter.setting(
            "second set point",
            Dimension.TEMPERATURE,
            401.15,
            273.15,
            433.15,
            Spread.EXACT,
            "temperature it holds while its terminal 'second' has voltage");
    static final Parameter BAND = Parameter.setting(
            "proportional band",
            Dimension.TEMPERATURE_RISE,
            8,
            0.2,
            100,
            Spread.relative(0.02),
            "error at which the output would be full");
    static final Parameter RESET =
            Parameter.setting("reset time", Dimension.TIME, 150, 5, 1e5, Spread.relative(0.02), "integral time");
    static final Parameter SENSOR = Parameter.setting(
            "sensor type",
            Dimension.NUMBER,
            0,
            0,
            3,
            Spread.EXACT,
            "0 for an NTC of 10 kΩ, 1 for an NTC of 50 kΩ, 2 for a Pt1000, 3 for a PTC of 1 kΩ");
    static final Parameter WINDOW = Parameter.usual(
            "pulse window", Dimension.TIME, 2, 0.1, 60, Spread.EXACT, "time over which the output is proportioned");
    static final Parameter ERROR = Parameter.condition(
            "reading error", Dimension.TEMPERATURE_RISE, 0, -40, 40, Spread.absolute(0.8), "of its input");
    static final Parameter LEAST = Parameter.condition(
            "works from", Dimension.VOLTAGE, 9, 1, 1000, Spread.relative(0.03), "supply below which it is dark");
    static final Parameter DRAWS = Parameter.usual(
            "supply resistance", Dimension.RESISTANCE, 150, 5, 1e5, Spread.relative(0.1), "as its supply sees it");
    static final Parameter ON = Ohms.closed("output on", 20, "resistance of the output when on");
    static final Parameter OFF = Ohms.open("output off", Ohms.OPEN, "resistance of the output when off");

    private static final Declaration DECLARATION = new Declaration(
            "temperature controller",
            List.of(
                    Port.current("plus", "supply"),
                    Port.current("minus", "supply"),
                    Port.current("sensor 1", "sensor input"),
                    Port.current("sensor 2", "sensor input"),
                    Port.current("feed", "voltage the output passes on"),
                    Port.current("output", "to the relay's input"),
                    Port.current("second", "input that calls the second set point")
                            .orPlugged()),
            List.of(SET_POINT, SECOND, BAND, RESET, SENSOR, WINDOW, ERROR, LEAST, DRAWS, ON, OFF));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("dead", 0.8, set(LEAST, 1000)),
            Fault.of("output dead", 0.6, set(ON, Ohms.OPEN)),
            Fault.of("output stuck on", 0.3, set(OFF, 20)),
            Fault.of("reads too high", 0.3, plus(ERROR, 4, 20)),
            Fault.of("reads too low", 0.3, plus(ERROR, -4, -20)),
            Fault.wrongSetting("set point too high", 0.8, plus(SET_POINT, 4, 14)),
            Fault.wrongSetting("set point too low", 1.0, plus(SET_POINT, -5, -30)),
            Fault.wrongSetting("set for another sensor", 0.3, set(SENSOR, 1)),
            Fault.wrongSetting("tuned far too slow", 0.3, times(BAND, 5, 10)));

    /** Voltage at which an input counts as called [V], and what it draws [Ω]. */
    private static final double CALLS = 4;

    private static final double INPUT = 20e3;

    private static final List<String> MESSAGES = List.of("dark", "none", "sensor open", "sensor shorted");

    @Override
    public Declaration declaration() {
        return DECLARATION;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        CurrentPlan current = b.current();
        int plus = b.terminal(c, "plus");
        int minus = b.terminal(c, "minus");
        current.add(new CurrentPlan.Resistor(c.id() + " supply", plus, minus, c.get(DRAWS)));
        int powered = b.slots().state(c.id() + ".powered", 0);
        b.control(new Waking(current.voltage(c.id() + " supply", minus, plus), powered, c.get(LEAST)));
        int duty = b.slots().smooth(c.id() + ".duty", 0);
        current.add(new CurrentPlan.Pulsed(
                c.id() + " output", b.terminal(c, "feed"), b.terminal(c, "output"), duty, c.get(ON), c.get(OFF)));
        int seen = current.seen(c.id() + " sensor", b.terminal(c, "sensor 1"), b.terminal(c, "sensor 2"));
        int shown = b.slots().smooth(c.id() + ".shown", Double.NaN);
        regulator(c, b, seen, shown, powered, duty);
        face(c, b, seen, shown, powered, duty);
    }

    private static void regulator(Component c, Blueprint b, int seen, int shown, int powered, int duty) {
        int first = b.handle(c, "set point", SET_POINT.min(), SET_POINT.max(), c.get(SET_POINT));
        int called = second(c, b);
        double second = c.get(SECOND);
        int set = b.slots().smooth(c.id() + ".holds", c.get(SET_POINT));
        b.control((x, dt) -> x[set] = x[called] > CALLS ? second : x[first]);
        b.reading(c, "set point", Dimension.TEMPERATURE, 0.1, x -> x[powered] > 0.5 ? x[set] : Double.NaN);
        b.heat()
                .regulator(new HeatPlan.Regulator(
                        c.id(),
                        SensorType.of(c.get(SENSOR)).law(c.get(ERROR)),
                        seen,
                        shown,
                        set,
                        1 / c.get(BAND),
                        c.get(RESET),
                        b.slots().smooth(c.id() + ".integral", 0),
                        powered,
                        duty,
                        c.get(WINDOW)));
    }

    /** Slot of the voltage at the input that calls the second set point. */
    private static int second(Component c, Blueprint b) {
        int minus = b.terminal(c, "minus");
        int second = b.terminal(c, "second");
        b.current().add(new CurrentPlan.Resistor(c.id() + " second", second, minus, INPUT));
        return b.current().voltage(c.id() + " second", minus, second);
    }

    /** What a person sees on its front. */
    private static void face(Component c, Blueprint b, int seen, int shown, int powered, int duty) {
        SensorType type = SensorType.of(c.get(SENSOR));
        b.reading(c, "display", Dimension.TEMPERATURE, 0.3, x -> x[powered] > 0.5 ? x[shown] : Double.NaN);
        b.choice(c, "message", MESSAGES, x -> {
            if (x[powered] < 0.5) {
                return 0;
            }
            boolean valid = !Double.isNaN(type.believed(x[seen]));
            return valid ? 1 : type.isOpen(x[seen]) ? 2 : 3;
        });
        b.choice(c, "lamp", LampPattern.WORDS, x -> x[powered] > 0.5 ? LampPattern.of(x[duty]) : 0);
    }

    private record Waking(int volts, int powered, double least) implements Control {
        @Override
        public void act(double[] x, double dt) {
            x[powered] = x[volts] >= least ? 1 : 0;
        }
    }
}
