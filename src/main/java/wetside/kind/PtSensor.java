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
import wetside.physics.Platinum;
import wetside.units.Dimension;

/** Platinum resistance thermometer: resistance rises as it warms. */
public final class PtSensor implements Kind {
    static final Parameter R0 = Parameter.usual(
            "resistance at 0 °C", Dimension.RESISTANCE, 1000, 50, 5000, Spread.relative(0.0012), "100 Ω or 1000 Ω");

    private static final Declaration DECLARATION = new Declaration(
            "Pt sensor",
            List.of(
                    Port.current("1", "one lead"),
                    Port.current("2", "other lead"),
                    Port.heat("tip", "what it measures")),
            List.of(R0, Thermometer.SEATING, Thermometer.SERIES, Thermometer.ACROSS));

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
        double r0 = c.get(R0);
        Thermometer.build(c, b, t -> Platinum.resistance(r0, t));
    }
}
