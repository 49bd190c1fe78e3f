package wetside.kind;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Machine;
import wetside.machine.Port;
import wetside.machine.Trait;

/** The register of kinds: the one list a new kind is added to. */
public final class Kinds {
    private static final List<Kind> ALL = List.of(
            new CheckValve(),
            // water, steam and heat
            new Surroundings(),
            new WaterMains(),
            new MainsCock(),
            new WaterTank(),
            new TankSeatValve(),
            new Strainer(),
            new SourceSelector(),
            new Hose(),
            new RotaryVanePump(),
            new VibratoryPump(),
            new Coupling(),
            new Tee(),
            new OverPressureValve(),
            new DrainTee(),
            new DrainTube(),
            Outlet.spout(),
            Outlet.blowOff(),
            new DrainCock(),
            new Boiler(),
            new Thermoblock(),
            new HeatExchangerTube(),
            new ThermosiphonPipe(),
            new LeverGroup(),
            new Lever(),
            new SpringLeverGroup(),
            new SightGlass(),
            new FillerCap(),
            new DripTray(),
            new Jet(),
            new FlowMeter(),
            new SolenoidGroup(),
            new ThermosiphonGroup(),
            new SaturatedGroup(),
            new SolenoidValve(),
            new ThreeWayValve(),
            new VacuumBreaker(),
            new SafetyValve(),
            new PressureGauge(),
            new PressureSwitch(),
            new PressureRegulator(),
            new Tap("steam tap", 3e-3, Trait.SHUTS, Trait.FOR_STEAM),
            new Tap("water tap", 2e-3, Trait.SHUTS),
            new MixingTap(),
            // electrical, sensing and control
            new Breaker(),
            new BrewButton(),
            new ControlBoard(),
            new DcSupply(),
            new DosingUnit(),
            new Fuse(),
            new HeatingElement(),
            new Lamp(),
            new Lead(),
            new LevelProbe(),
            new Microswitch(),
            new Motor(),
            new NtcSensor(),
            new PowerCord(),
            new KeyPad(),
            new PowerSwitch(),
            new ProtectiveConductor(),
            RisingSensor.platinum(),
            RisingSensor.silicon(),
            new ReedSensor(),
            new SignalLead(),
            new Socket(),
            new Relay("mechanical relay", 1, 160, 8.5),
            new Relay("contactor", 2, 4000, 170),
            new SolidStateRelay(),
            new TemperatureController(),
            new ThermalLimit(),
            new ThermalFuse(),
            new Thermostat(),
            new RockerSwitch(),
            new IntervalTimer());

    private static final Map<String, Kind> BY_NAME = new LinkedHashMap<>();

    static {
        ALL.forEach(k -> BY_NAME.put(k.declaration().name(), k));
    }

    private Kinds() {}

    public static List<Kind> all() {
        return ALL;
    }

    /** Declarations for the reader of machine files. */
    public static List<Declaration> declarations() {
        return ALL.stream().map(Kind::declaration).toList();
    }

    public static Kind of(Component c) {
        return BY_NAME.get(c.kind().name());
    }

    /** All parts of a machine, written down by their kinds; what looks into a boiler after the boilers. */
    public static Blueprint blueprint(Machine machine) {
        Blueprint b = new Blueprint(machine);
        inBuildingOrder(machine).forEach(c -> of(c).build(c, b));
        return b;
    }

    /** What is screwed into another part's wall comes after it: it asks where that part's water stands. */
    static List<Component> inBuildingOrder(Machine machine) {
        return Stream.of(false, true)
                .flatMap(looking -> machine.components().stream().filter(c -> looksIn(c) == looking))
                .toList();
    }

    private static boolean looksIn(Component c) {
        return c.kind().ports().stream().anyMatch(Port::screwed);
    }
}
