package wetside.kind;

import static wetside.kind.Fault.set;
import static wetside.kind.Fault.wrongInstallation;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** The water supply of the house, up to the machine's cock. */
public final class WaterMains implements Kind {
    static final Parameter PRESSURE = Parameter.usual(
            "pressure", Dimension.PRESSURE, 2e5, 0, 12e5, Spread.relative(0.15), "above the air, with nothing running");
    static final Parameter TEMPERATURE = Parameter.usual(
            "temperature", Dimension.TEMPERATURE, 288.15, 274.15, 308.15, Spread.absolute(4), "of the water");
    static final Parameter CONDUCTIVITY = Parameter.usual(
            "conductivity", Dimension.CONDUCTIVITY, 0.04, 1e-4, 0.5, Spread.relative(0.3), "of the water at 25 °C");
    static final Parameter BORE = Parameter.usual(
            "bore",
            Dimension.LENGTH,
            4e-3,
            0.3e-3,
            20e-3,
            Spread.relative(0.2),
            "of an orifice that would hold back as much as the house's pipes");

    private static final Declaration DECLARATION = new Declaration(
            "water mains",
            List.of(Port.fluid("out", "towards the machine's cock")),
            List.of(PRESSURE, TEMPERATURE, CONDUCTIVITY, BORE));

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("pressure too low", 3.0, set(PRESSURE, 1.0e5, 0.2e5)),
            wrongInstallation("pressure too high", 3.0, set(PRESSURE, 4.5e5, 8e5)),
            wrongInstallation("shut off in the house", 2.0, set(PRESSURE, 0), set(BORE, 0.3e-3)),
            wrongInstallation("very pure water", 2.0, set(CONDUCTIVITY, 1.5e-3, 3e-4)));

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
        int house = b.innerNode();
        int pressure = b.slots().smooth(c.id() + ".pressure", 101325 + c.get(PRESSURE));
        int temperature = b.slots().smooth(c.id() + ".temperature", c.get(TEMPERATURE));
        int conductivity = b.slots().smooth(c.id() + ".conductivity", c.get(CONDUCTIVITY));
        b.fluid().open(house, pressure, temperature, conductivity, FluidPlan.ALWAYS);
        b.control((x, dt) -> x[pressure] = x[b.atmosphere()] + c.get(PRESSURE));
        FluidPlan.Passage pipes = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.COLD);
        b.fluid().branch(c.id(), house, b.node(c, "out"), pipes, FluidPlan.ALWAYS);
        b.reading(c, "conductivity", Dimension.CONDUCTIVITY, 0.05 * c.get(CONDUCTIVITY), x -> x[conductivity]);
    }
}
