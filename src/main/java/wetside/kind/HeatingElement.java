package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

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
import wetside.machine.Trait;
import wetside.units.Dimension;

/**
 * Sheathed immersion heater of one or more legs side by side. Assumes: resistance does not change with temperature;
 * whatever leaks to the sheath does so at the middle of the first leg; the sheath is one lump, as hot where the water
 * still covers it as where it no longer does.
 */
public final class HeatingElement implements Kind {
    static final Parameter POWER = Parameter.required(
            "rated power", Dimension.POWER, 50, 9000, Spread.relative(0.05), "all legs, at the rated voltage");
    static final Parameter VOLTAGE = Parameter.usual(
            "rated voltage", Dimension.VOLTAGE, 230, 12, 480, Spread.EXACT, "voltage the power is stated for");
    static final Parameter LEGS = Parameter.usual(
            "legs", Dimension.NUMBER, 1, 1, 6, Spread.EXACT, "equal resistances side by side, on common terminals");
    static final Parameter CAPACITY = Parameter.usual(
            "heat capacity", Dimension.HEAT_CAPACITY, 150, 5, 5000, Spread.relative(0.1), "of sheath and filling");
    static final Parameter CONDUCTANCE = Parameter.usual(
            "conductance to water",
            Dimension.THERMAL_CONDUCTANCE,
            60,
            1,
            2000,
            Spread.relative(0.2),
            "from the clean sheath");
    static final Parameter SURFACE = Parameter.usual(
            "surface", Dimension.AREA, 0.02, 0.001, 0.5, Spread.relative(0.1), "of the sheath under water");
    static final Parameter TOP = Parameter.usual(
            "covered above",
            Dimension.RATIO,
            0.28,
            0.02,
            1,
            Spread.absolute(0.02),
            "level of the boiler, as a share of its volume, at which water covers all of it");
    static final Parameter BOTTOM = Parameter.usual(
            "bare below",
            Dimension.RATIO,
            0.08,
            0,
            0.9,
            Spread.absolute(0.01),
            "level of the boiler at which water no longer touches it");
    static final Parameter OPEN_LEGS =
            Parameter.condition("open legs", Dimension.NUMBER, 0, 0, 6, Spread.EXACT, "legs burnt through");
    static final Parameter SCALE =
            Parameter.condition("scale", Dimension.LENGTH, 0, 0, 0.01, Spread.EXACT, "thickness of the cake on it");
    static final Parameter COLD_LEAK =
            Ohms.open("insulation cold", Ohms.INSULATION, "to the sheath at 20 °C, from the middle of the first leg");
    static final Parameter HOT_LEAK =
            Ohms.open("insulation hot", Ohms.INSULATION, "to the sheath at 120 °C, from the middle of the first leg");

    private static final double SCALE_CONDUCTIVITY = 1;

    private static final Declaration DECLARATION = new Declaration(
            "heating element",
            List.of(
                    Port.current("1", "terminal, usually towards the line"),
                    Port.current("2", "terminal, usually towards the neutral"),
                    Port.current("earth", "its flange and sheath"),
                    Port.heat("water", "what it heats"),
                    Port.heat("sheath", "its hot skin").orPlugged()),
            List.of(
                    POWER,
                    VOLTAGE,
                    LEGS,
                    CAPACITY,
                    CONDUCTANCE,
                    SURFACE,
                    TOP,
                    BOTTOM,
                    OPEN_LEGS,
                    SCALE,
                    COLD_LEAK,
                    HOT_LEAK),
            Trait.NEEDS_EARTH);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("one leg open", 1.0, set(OPEN_LEGS, 1)),
            Fault.of("open", 1.0, set(OPEN_LEGS, 6)),
            Fault.of("leaks to earth", 0.8, log(COLD_LEAK, 100e3, 500), log(HOT_LEAK, 50e3, 300)),
            Fault.of("leaks to earth when hot", 0.8, log(COLD_LEAK, 20e6, 1e6), log(HOT_LEAK, 15e3, 500)),
            Fault.of("shorted to the sheath", 0.3, set(COLD_LEAK, 1), set(HOT_LEAK, 1)),
            Fault.of("caked with scale", 1.5, set(SCALE, 0.5e-3, 4e-3)));

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
        int sheath = b.heatNode(c, "sheath");
        b.heat().capacity(sheath, c.get(CAPACITY));
        double cake = c.get(SCALE) / (SCALE_CONDUCTIVITY * c.get(SURFACE));
        double bottom = Math.min(c.get(BOTTOM), c.get(TOP) - 0.01);
        b.heat()
                .immersed(new HeatPlan.Immersed(
                        sheath, b.heatNode(c, "water"), 1 / (1 / c.get(CONDUCTANCE) + cake), bottom, c.get(TOP)));
        int middle = legs(c, b, sheath);
        insulation(c, b, sheath, middle);
    }

    /** The legs that still conduct; returns the middle of the first, where it leaks. */
    private static int legs(Component c, Blueprint b, int sheath) {
        int legs = (int) Math.round(c.get(LEGS));
        int whole = Math.max(0, legs - (int) Math.round(c.get(OPEN_LEGS)));
        double half = legs * c.get(VOLTAGE) * c.get(VOLTAGE) / c.get(POWER) / 2;
        int one = b.terminal(c, "1");
        int two = b.terminal(c, "2");
        int middle = b.innerTerminal();
        half(c.id() + " first half", one, middle, half, sheath, b);
        half(c.id() + " second half", middle, two, whole > 0 ? half : Ohms.OPEN, sheath, b);
        if (whole > 1) {
            half(c.id() + " other legs", one, two, 2 * half / (whole - 1), sheath, b);
        }
        return middle;
    }

    private static void half(String name, int from, int to, double ohms, int sheath, Blueprint b) {
        int element = b.current().add(new CurrentPlan.Resistor(name, from, to, ohms));
        b.heat().source(sheath, b.current().power(element));
    }

    /** Insulation that falls with temperature is followed; insulation that does not is a plain resistor. */
    private static void insulation(Component c, Blueprint b, int sheath, int middle) {
        int earth = b.terminal(c, "earth");
        double cold = c.get(COLD_LEAK);
        double hot = c.get(HOT_LEAK);
        String name = c.id() + " insulation";
        if (cold == hot) {
            b.current().add(new CurrentPlan.Resistor(name, middle, earth, cold));
            return;
        }
        int ohms = b.slots().smooth(name + ".ohms", cold);
        b.current().add(new CurrentPlan.Varying(name, middle, earth, ohms));
        b.control(new Drying(b.heat().temperature(sheath), ohms, cold, hot));
    }

    /** Sets the insulation in steps of a tenth, so that the network is not solved anew for nothing. */
    private record Drying(int temperature, int ohms, double cold, double hot) implements Control {
        @Override
        public void act(double[] x, double dt) {
            double share = Math.max(0, Math.min(1.2, (x[temperature] - 293.15) / 100));
            double now = cold * Math.pow(hot / cold, share);
            if (Math.abs(x[ohms] - now) > 0.1 * now) {
                x[ohms] = now;
            }
        }
    }
}
