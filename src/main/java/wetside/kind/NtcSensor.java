package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Thermistor;
import wetside.units.Dimension;

/** Thermistor in a sleeve: resistance falls as it warms, about four per cent a kelvin. */
public final class NtcSensor implements Kind {
    static final Parameter R25 = Parameter.usual(
            "resistance at 25 °C", Dimension.RESISTANCE, 10e3, 100, 1e6, Spread.relative(0.01), "by its table");
    static final Parameter B = Parameter.usual(
            "B value", Dimension.NUMBER, 3977, 2500, 5000, Spread.relative(0.005), "how steeply it falls [K]");

    private static final Declaration DECLARATION = new Declaration(
            "NTC sensor",
            List.of(
                    Port.current("1", "one lead"),
                    Port.current("2", "other lead"),
                    Port.heat("tip", "what it measures")),
            List.of(R25, B, Thermometer.SEATING, Thermometer.SERIES, Thermometer.ACROSS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("open", 1.2, set(Thermometer.SERIES, Ohms.OPEN)),
            Fault.of("shorted", 0.4, log(Thermometer.ACROSS, 20, 0.1)),
            Fault.of("drifted, reads cold", 0.8, times(R25, 1.12, 1.5)),
            Fault.of("drifted, reads hot", 0.5, times(R25, 0.9, 0.65)),
            Fault.of("damp, reads hot", 0.4, log(Thermometer.ACROSS, 5e3, 300)),
            Fault.of("not seated", 0.6, log(Thermometer.SEATING, 0.06, 0.006)));

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
        double r25 = c.get(R25);
        double beta = c.get(B);
        Thermometer.build(c, b, t -> Thermistor.beta(r25, beta, t));
    }
}
