package wetside.machine;

import java.util.List;
import wetside.units.Dimension;

/** A handful of kinds, enough for every sort of mistake in a machine file. */
final class SmallKinds {
    static final Declaration MAINS = new Declaration(
            "water mains",
            List.of(Port.fluid("out", "the tap in the wall")),
            List.of(
                    Parameter.usual(
                            "pressure", Dimension.PRESSURE, 2e5, 0, 10e5, Spread.absolute(1e5), "standing pressure"),
                    Parameter.usual(
                            "temperature",
                            Dimension.TEMPERATURE,
                            288.15,
                            273.15,
                            313.15,
                            Spread.absolute(8),
                            "of the water")));
    static final Declaration COCK = new Declaration(
            "mains cock",
            List.of(Port.fluid("in", "from the mains"), Port.fluid("out", "to the machine")),
            List.of(Parameter.usual(
                    "bore", Dimension.LENGTH, 8e-3, 1e-3, 30e-3, Spread.relative(0.05), "open way through")),
            Trait.SHUTS);
    static final Declaration TEE = new Declaration(
            "tee",
            List.of(
                    Port.fluid("a", "one arm"),
                    Port.fluid("b", "another arm"),
                    Port.fluid("c", "third arm").orPlugged()),
            List.of());
    static final Declaration BOILER = new Declaration(
            "flooded boiler",
            List.of(
                    Port.fluid("in", "feed"),
                    Port.fluid("out", "draw").orPlugged(),
                    Port.heat("shell", "outer face").orPlugged(),
                    Port.current("earth", "earth screw")),
            List.of(
                    Parameter.required(
                            "volume", Dimension.VOLUME, 0.05e-3, 20e-3, Spread.relative(0.03), "water it holds"),
                    Parameter.usual(
                            "loss", Dimension.THERMAL_CONDUCTANCE, 1, 0.1, 10, Spread.relative(0.3), "to the air"),
                    Parameter.setting(
                            "set point", Dimension.TEMPERATURE, 366.15, 300, 430, Spread.absolute(1), "wanted"),
                    Parameter.setting("share", Dimension.RATIO, 0.5, 0, 1, Spread.EXACT, "of something")),
            Trait.CLOSED_VESSEL,
            Trait.NEEDS_EARTH);
    static final Declaration SAFETY = new Declaration(
            "safety valve",
            List.of(Port.fluid("in", "from the boiler")),
            List.of(Parameter.required(
                    "opening pressure", Dimension.PRESSURE, 0.5e5, 16e5, Spread.relative(0.05), "it lifts at")),
            Trait.RELIEF);
    static final Declaration SOCKET = new Declaration(
            "socket",
            List.of(
                    Port.current("live", "line"),
                    Port.current("neutral", "neutral").orPlugged(),
                    Port.current("earth", "protective earth").orPlugged()),
            List.of(Parameter.usual(
                    "voltage", Dimension.VOLTAGE, 230, 90, 260, Spread.relative(0.1), "at the socket")));
    static final Declaration ELEMENT = new Declaration(
            "heating element",
            List.of(
                    Port.current("in", "one end"),
                    Port.current("out", "other end").orPlugged(),
                    Port.heat("sheath", "in the water").orPlugged()),
            List.of());
    static final Declaration SURROUNDINGS = new Declaration(
            "surroundings",
            List.of(),
            List.of(
                    Parameter.usual("altitude", Dimension.LENGTH, 200, -400, 5000, Spread.absolute(300), "above sea"),
                    Parameter.usual(
                            "temperature", Dimension.TEMPERATURE, 295.15, 273.15, 323.15, Spread.absolute(5), "air")));

    static final List<Declaration> ALL = List.of(MAINS, COCK, TEE, BOILER, SAFETY, SOCKET, ELEMENT, SURROUNDINGS);

    private SmallKinds() {}
}
