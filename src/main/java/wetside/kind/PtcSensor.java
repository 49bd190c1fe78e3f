package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.SiliconSensor;
import wetside.units.Dimension;

/** Silicon sensor: resistance rises as it warms, by about eight per mille a kelvin. */
public final class PtcSensor implements Kind {
    static final Parameter R25 = Parameter.usual(
            "resistance at 25 °C", Dimension.RESISTANCE, 1000, 100, 5000, Spread.relative(0.01), "by its data sheet");

    private static final Declaration DECLARATION = new Declaration(
            "PTC sensor",
            List.of(
                    Port.current("1", "one lead"),
                    Port.current("2", "other lead"),
                    Port.heat("tip", "what it measures")),
            List.of(R25, Thermometer.SEATING, Thermometer.SERIES, Thermometer.ACROSS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("open", 1.0, set(Thermometer.SERIES, Ohms.OPEN)),
            Fault.of("shorted", 0.3, log(Thermometer.ACROSS, 20, 0.1)),
            Fault.of("corroded, reads hot", 0.5, set(Thermometer.SERIES, 20, 150)),
            Fault.of("damp, reads cold", 0.3, log(Thermometer.ACROSS, 50e3, 5e3)),
            Fault.of("not seated", 0.5, log(Thermometer.SEATING, 0.06, 0.006)));

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
        Thermometer.build(c, b, t -> SiliconSensor.resistance(r25, t));
    }
}
