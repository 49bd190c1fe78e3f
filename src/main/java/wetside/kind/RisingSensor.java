package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Platinum;
import wetside.physics.SiliconSensor;
import wetside.units.Dimension;

/** A sensor whose resistance rises as it warms; which one it is says its law. */
public final class RisingSensor implements Kind {
    private static final List<Fault> FAULTS = List.of(
            Fault.of("open", 1.0, set(Thermometer.SERIES, Ohms.OPEN)),
            Fault.of("shorted", 0.3, log(Thermometer.ACROSS, 20, 0.1)),
            Fault.of("corroded, reads hot", 0.5, set(Thermometer.SERIES, 20, 150)),
            Fault.of("damp, reads cold", 0.3, log(Thermometer.ACROSS, 50e3, 5e3)),
            Fault.of("not seated", 0.5, log(Thermometer.SEATING, 0.06, 0.006)));

    private final Declaration declaration;
    private final Parameter nominal;
    private final DoubleBinaryOperator law;

    private RisingSensor(String name, Parameter nominal, DoubleBinaryOperator law) {
        this.nominal = nominal;
        this.law = law;
        declaration = new Declaration(
                name,
                List.of(
                        Port.current("1", "one lead"),
                        Port.current("2", "other lead"),
                        Port.heat("tip", "what it measures")),
                List.of(nominal, Thermometer.SEATING, Thermometer.SERIES, Thermometer.ACROSS));
    }

    /** Platinum resistance thermometer. */
    static RisingSensor platinum() {
        Parameter r0 = Parameter.usual(
                "resistance at 0 °C", Dimension.RESISTANCE, 1000, 50, 5000, Spread.relative(0.0012), "100 Ω or 1000 Ω");
        return new RisingSensor("Pt sensor", r0, Platinum::resistance);
    }

    /** Silicon sensor: about eight per mille a kelvin. */
    static RisingSensor silicon() {
        Parameter r25 = Parameter.usual(
                "resistance at 25 °C",
                Dimension.RESISTANCE,
                1000,
                100,
                5000,
                Spread.relative(0.01),
                "by its data sheet");
        return new RisingSensor("PTC sensor", r25, SiliconSensor::resistance);
    }

    @Override
    public Declaration declaration() {
        return declaration;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        double resistance = c.get(nominal);
        Thermometer.build(c, b, t -> law.applyAsDouble(resistance, t));
    }
}
