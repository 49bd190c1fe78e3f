package wetside.bench;

import wetside.blueprint.CurrentPlan;
import wetside.blueprint.Plans;
import wetside.blueprint.Slots;

/** The wiring of a machine with two boilers, every lead a resistance: as large as such nets become. */
final class TwinBoilerWiring {
    private static final double OPEN = 1e12;

    final Slots slots = new Slots();
    final CurrentPlan plan = Plans.current(slots);
    int terminals;
    final int brewDuty = slots.smooth("brew duty", 0.1);
    final int steamDuty = slots.smooth("steam duty", 0.2);
    final int pump = slots.state("pump", 0);
    final int brewSensor = slots.smooth("brew sensor", 800);
    final int steamSensor = slots.smooth("steam sensor", 400);
    final int water = slots.smooth("water", 8000);
    final int winding = slots.smooth("winding", 100);
    final int mains = slots.smooth("mains", 230);
    int brewPower;

    private final int star = terminal();
    private final int earth = terminal();

    TwinBoilerWiring() {
        int plugLine = terminal();
        plan.add(new CurrentPlan.Source("line", star, plugLine, mains, 0.35));
        resistor(star, earth, 0.1);
        int chassis = lead(earth);
        int line = lead(contact("switch line", lead(lead(plugLine)), 0.01));
        int neutral = lead(contact("switch neutral", lead(lead(star)), 0.01));
        line = lead(contact("fuse", line, 0.01));
        int minus = terminal();
        int plus = terminal();
        resistor(line, neutral, 50e3);
        plan.add(new CurrentPlan.Supply("board", minus, plus, line, neutral, 150, 12, 0.5));
        resistor(plus, minus, 300);
        resistor(minus, chassis, 1);
        brewPower = heater("brew", brewDuty, brewSensor, line, neutral, plus, minus, chassis);
        heater("steam", steamDuty, steamSensor, line, neutral, plus, minus, chassis);
        loads(line, neutral, chassis);
    }

    private void loads(int line, int neutral, int chassis) {
        int motor = lead(switched("pump relay", pump, line));
        int back = lead(neutral);
        plan.add(new CurrentPlan.Varying("winding", motor, back, winding));
        plan.amps(plan.elements().size() - 1);
        plan.voltage("motor", back, motor);
        resistor(motor, chassis, 1e8);
        for (int i = 0; i < 3; i++) {
            int coil = lead(switched("valve relay " + i, slots.state("valve " + i, 0), line));
            plan.amps(resistor(coil, neutral, 3000));
            plan.share("valve " + i, neutral, coil, 150);
        }
        plan.share("lamp", neutral, line, 150);
        int rod = lead(terminal());
        plan.add(new CurrentPlan.Varying("water", rod, chassis, water));
        plan.seen("probe", rod, chassis);
        resistor(rod, chassis, 1e9);
    }

    private int heater(String name, int duty, int sensor, int line, int neutral, int plus, int minus, int chassis) {
        int output = terminal();
        plan.add(new CurrentPlan.Pulsed(name + " output", lead(plus), output, duty, 10, OPEN));
        int input = lead(output);
        resistor(input, lead(minus), 1200);
        int load = terminal();
        plan.add(new CurrentPlan.Driven(name + " relay", lead(line), load, input, minus, 4, 0.03, 1e6));
        plan.share(name + " relay lamp", minus, input, 3);
        int one = lead(contact(name + " limit", lead(load), 0.01));
        int middle = terminal();
        int two = lead(neutral);
        int first = resistor(one, middle, 19);
        plan.power(resistor(middle, two, 19));
        resistor(middle, chassis, 1e7);
        int a = terminal();
        int b = terminal();
        plan.add(new CurrentPlan.Varying(name + " sensor", a, b, sensor));
        plan.seen(name + " input", lead(a), lead(b));
        resistor(a, chassis, 1e9);
        return plan.power(first);
    }

    private int terminal() {
        return terminals++;
    }

    private int resistor(int from, int to, double ohms) {
        return plan.add(new CurrentPlan.Resistor("resistor " + plan.elements().size(), from, to, ohms));
    }

    private int lead(int from) {
        int to = terminal();
        resistor(from, to, 0.01);
        return to;
    }

    private int contact(String name, int from, double ohms) {
        int to = terminal();
        plan.add(new CurrentPlan.Contact(name, from, to, slots.state(name, 1), ohms, OPEN));
        return to;
    }

    private int switched(String name, int slot, int from) {
        int to = terminal();
        plan.add(new CurrentPlan.Contact(name, from, to, slot, 0.02, OPEN));
        return to;
    }
}
