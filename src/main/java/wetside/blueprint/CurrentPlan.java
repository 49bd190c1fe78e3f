package wetside.blueprint;

import java.util.ArrayList;
import java.util.List;

/**
 * The electrical network: RMS values in resistances, contacts and sources between terminals. Pulsed contacts are on for a
 * share of the time; everything read from the network is then an average over that time.
 */
public final class CurrentPlan {
    private final Slots slots;
    private final List<Element> elements = new ArrayList<>();
    private final List<Probe> probes = new ArrayList<>();

    CurrentPlan(Slots slots) {
        this.slots = slots;
    }

    /** What lies between two terminals. */
    public sealed interface Element permits Resistor, Varying, Contact, Pulsed, Driven, Source, Supply {
        String name();

        int from();

        int to();
    }

    /** @param ohms [Ω] */
    public record Resistor(String name, int from, int to, double ohms) implements Element {}

    /** @param ohms slot [Ω]: a sensor, a level probe; may change at every step */
    public record Varying(String name, int from, int to, int ohms) implements Element {}

    /** @param closed state slot: closed above 0.5 */
    public record Contact(String name, int from, int to, int closed, double on, double off) implements Element {}

    /** @param duty slot: share of the time it is closed, 0..1 */
    public record Pulsed(String name, int from, int to, int duty, double on, double off) implements Element {}

    /** Closed while the voltage between two other terminals is at least {@code pullIn} [V]. */
    public record Driven(String name, int from, int to, int in, int ret, double pullIn, double on, double off)
            implements Element {}

    /** An ideal source of {@code volts} [V] (slot) behind {@code ohms}, lifting {@code to} above {@code from}. */
    public record Source(String name, int from, int to, int volts, double ohms) implements Element {}

    /** A source that lives while the voltage between {@code in} and {@code ret} is at least {@code least} [V]. */
    public record Supply(String name, int from, int to, int in, int ret, double least, double volts, double ohms)
            implements Element {}

    /** What is read from the network into a slot. */
    public sealed interface Probe permits Power, Voltage, Share, Seen, Amps {
        int slot();
    }

    /** Mean power in an element [W]. */
    public record Power(int element, int slot) implements Probe {}

    /** Mean current through an element, from → to [A]. */
    public record Amps(int element, int slot) implements Probe {}

    /** Mean voltage of {@code to} above {@code from} [V]. */
    public record Voltage(int from, int to, int slot) implements Probe {}

    /** Share of the time in which the voltage between two terminals is at least {@code least} [V]. */
    public record Share(int from, int to, double least, int slot) implements Probe {}

    /**
     * Resistance between two terminals as an instrument input sees it [Ω], its own input resistance not counted, all
     * sources at rest, contacts as they stand.
     */
    public record Seen(int from, int to, int slot) implements Probe {}

    public int add(Element element) {
        elements.add(element);
        return elements.size() - 1;
    }

    /** Slot that receives the mean power in an element [W]. */
    public int power(int element) {
        int slot = slots.smooth(elements.get(element).name() + ".power", 0);
        probes.add(new Power(element, slot));
        return slot;
    }

    public int amps(int element) {
        int slot = slots.smooth(elements.get(element).name() + ".current", 0);
        probes.add(new Amps(element, slot));
        return slot;
    }

    public int voltage(String name, int from, int to) {
        int slot = slots.smooth(name + ".voltage", 0);
        probes.add(new Voltage(from, to, slot));
        return slot;
    }

    public int share(String name, int from, int to, double least) {
        int slot = slots.smooth(name + ".live share", 0);
        probes.add(new Share(from, to, least, slot));
        return slot;
    }

    public int seen(String name, int from, int to) {
        int slot = slots.smooth(name + ".resistance seen", Double.POSITIVE_INFINITY);
        probes.add(new Seen(from, to, slot));
        return slot;
    }

    /** What one component alone has between its terminals, as if all wires were pulled off it; nothing is probed. */
    public CurrentPlan only(String component) {
        CurrentPlan alone = new CurrentPlan(slots);
        elements.stream()
                .filter(e -> e.name().equals(component) || e.name().startsWith(component + " "))
                .forEach(alone::add);
        return alone;
    }

    public List<Element> elements() {
        return elements;
    }

    public List<Probe> probes() {
        return probes;
    }
}
