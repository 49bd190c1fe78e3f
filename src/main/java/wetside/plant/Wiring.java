package wetside.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.CurrentPlan;
import wetside.physics.ResistiveNetwork;

/** A current plan as arrays: which slots decide it, and every element's conductance in a given state of those. */
final class Wiring {
    /** No resistance is taken as smaller than this [Ω]. */
    private static final double LEAST = 1e-6;
    /** Conductance a varying element is given in the network itself [S]; its own value is added outside. */
    static final double NOMINAL = 1e-4;

    final List<CurrentPlan.Element> elements;
    final int[] from;
    final int[] to;
    /** Slots of contacts, of duties and of source voltages, each once. */
    final int[] contacts;

    final int[] duties;
    final int[] voltages;
    /** Elements that voltage moves (driven contacts, supplies), and those whose resistance varies. */
    final int[] driven;

    final int[] varying;
    /** Nodes each driven element watches, and the voltage from which it is on. */
    final int[] drivenIn;

    final int[] drivenRet;
    final double[] least;
    final ResistiveNetwork network;
    /** Words of a state: contacts, voltages, duties that are on, driven elements that are on. */
    final int words;

    private final Map<Integer, Integer> nodes = new HashMap<>();
    private final double[] on;
    private final double[] off;
    private final double[] volts;
    /** What switches each element: see {@link Rule}. */
    private final Rule[] rules;

    private final int[] bits;
    /** Slot of a varying element's resistance. */
    private final int[] ohms;

    private enum Rule {
        FIXED,
        CONTACT,
        DUTY,
        DRIVEN,
        SUPPLY,
        SOURCE
    }

    Wiring(CurrentPlan plan) {
        elements = List.copyOf(plan.elements());
        int count = elements.size();
        from = new int[count];
        to = new int[count];
        on = new double[count];
        off = new double[count];
        volts = new double[count];
        rules = new Rule[count];
        bits = new int[count];
        ohms = new int[count];
        List<Integer> contactSlots = new ArrayList<>();
        List<Integer> dutySlots = new ArrayList<>();
        List<Integer> voltSlots = new ArrayList<>();
        List<Integer> drivenElements = new ArrayList<>();
        List<Integer> varyingElements = new ArrayList<>();
        for (int e = 0; e < count; e++) {
            CurrentPlan.Element element = elements.get(e);
            from[e] = node(element.from());
            to[e] = node(element.to());
            if (element instanceof CurrentPlan.Resistor r) {
                set(e, Rule.FIXED, 0, r.ohms(), r.ohms());
            } else if (element instanceof CurrentPlan.Varying v) {
                ohms[e] = v.ohms();
                set(e, Rule.FIXED, 0, 1 / NOMINAL, 1 / NOMINAL);
                varyingElements.add(e);
            } else if (element instanceof CurrentPlan.Contact c) {
                set(e, Rule.CONTACT, index(contactSlots, c.closed()), c.on(), c.off());
            } else if (element instanceof CurrentPlan.Pulsed p) {
                set(e, Rule.DUTY, index(dutySlots, p.duty()), p.on(), p.off());
            } else if (element instanceof CurrentPlan.Driven d) {
                set(e, Rule.DRIVEN, drivenElements.size(), d.on(), d.off());
                drivenElements.add(e);
            } else if (element instanceof CurrentPlan.Source s) {
                set(e, Rule.SOURCE, index(voltSlots, s.volts()), s.ohms(), s.ohms());
            } else if (element instanceof CurrentPlan.Supply s) {
                set(e, Rule.SUPPLY, drivenElements.size(), s.ohms(), Double.POSITIVE_INFINITY);
                volts[e] = s.volts();
                drivenElements.add(e);
            }
        }
        contacts = array(contactSlots);
        duties = array(dutySlots);
        voltages = array(voltSlots);
        driven = array(drivenElements);
        varying = array(varyingElements);
        words = 1 + voltages.length + 2;
        if (driven.length > 64) {
            throw new IllegalStateException("more than 64 relays and supplies");
        }
        drivenIn = new int[driven.length];
        drivenRet = new int[driven.length];
        least = new double[driven.length];
        nodeAllNamed(plan);
        network = new ResistiveNetwork(nodes.size(), from, to, reference());
    }

    private void set(int e, Rule rule, int bit, double ohmsOn, double ohmsOff) {
        rules[e] = rule;
        bits[e] = bit;
        on[e] = siemens(e, ohmsOn);
        off[e] = siemens(e, ohmsOff);
    }

    private double siemens(int e, double ohms) {
        if (!(ohms >= 0)) {
            throw new IllegalStateException(elements.get(e).name() + " has a resistance of " + ohms + " Ω");
        }
        return conductance(ohms);
    }

    static double conductance(double ohms) {
        return 1 / Math.max(ohms, LEAST);
    }

    private static int index(List<Integer> slots, int slot) {
        int i = slots.indexOf(slot);
        if (i < 0) {
            slots.add(slot);
            i = slots.size() - 1;
        }
        if (i > 63) {
            throw new IllegalStateException("more than 64 slots of one sort switch the current");
        }
        return i;
    }

    private static int[] array(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Terminals at which only a probe or a coil looks are nodes too. */
    private void nodeAllNamed(CurrentPlan plan) {
        for (int i = 0; i < driven.length; i++) {
            if (elements.get(driven[i]) instanceof CurrentPlan.Driven d) {
                watch(i, d.in(), d.ret(), d.pullIn());
            } else if (elements.get(driven[i]) instanceof CurrentPlan.Supply s) {
                watch(i, s.in(), s.ret(), s.least());
            }
        }
        for (CurrentPlan.Probe probe : plan.probes()) {
            if (probe instanceof CurrentPlan.Voltage v) {
                node(v.from());
                node(v.to());
            } else if (probe instanceof CurrentPlan.Share s) {
                node(s.from());
                node(s.to());
            } else if (probe instanceof CurrentPlan.Seen s) {
                node(s.from());
                node(s.to());
            }
        }
    }

    private void watch(int i, int in, int ret, double volts) {
        drivenIn[i] = node(in);
        drivenRet[i] = node(ret);
        least[i] = volts;
    }

    private int node(int terminal) {
        return nodes.computeIfAbsent(terminal, t -> nodes.size());
    }

    /** Node of a terminal, or -1 where nothing is joined to it. */
    int nodeOf(int terminal) {
        return nodes.getOrDefault(terminal, -1);
    }

    /** The first source's return, in a house its neutral, is where potentials count from. */
    private int reference() {
        for (int e = 0; e < rules.length; e++) {
            if (rules[e] == Rule.SOURCE) {
                return from[e];
            }
        }
        return -1;
    }

    boolean isSource(int e) {
        return rules[e] == Rule.SOURCE || rules[e] == Rule.SUPPLY;
    }

    /** Writes contacts and voltages in {@code x} into a key; what is pulsed on and what is driven follow after them. */
    void read(double[] x, long[] key) {
        long closed = 0;
        for (int i = 0; i < contacts.length; i++) {
            if (x[contacts[i]] > 0.5) {
                closed |= 1L << i;
            }
        }
        key[0] = closed;
        for (int i = 0; i < voltages.length; i++) {
            key[1 + i] = Double.doubleToRawLongBits(x[voltages[i]]);
        }
    }

    /** Conductances [S] and source voltages [V] of all elements in a state. */
    void set(long[] key, double[] siemens, double[] emf) {
        long closed = key[0];
        long pulsed = key[words - 2];
        long moved = key[words - 1];
        for (int e = 0; e < rules.length; e++) {
            boolean isOn = switch (rules[e]) {
                case FIXED, SOURCE -> true;
                case CONTACT -> (closed >> bits[e] & 1) != 0;
                case DUTY -> (pulsed >> bits[e] & 1) != 0;
                case DRIVEN, SUPPLY -> (moved >> bits[e] & 1) != 0;
            };
            siemens[e] = isOn ? on[e] : off[e];
            emf[e] = rules[e] == Rule.SOURCE
                    ? Double.longBitsToDouble(key[1 + bits[e]])
                    : rules[e] == Rule.SUPPLY && isOn ? volts[e] : 0;
        }
    }

    /** Present conductance of a varying element [S]. */
    double varyingSiemens(int e, double[] x) {
        return conductance(x[ohms[e]]);
    }

    /** Takes every source out, for a resistance. */
    void withoutSources(double[] siemens) {
        for (int e = 0; e < rules.length; e++) {
            if (isSource(e)) {
                siemens[e] = 0;
            }
        }
    }

    /** Conductances with the plug out: nothing driven, nothing pulsed, no source, sensors as they are [S]. */
    double[] unplugged(double[] x) {
        long[] key = new long[words];
        read(x, key);
        double[] siemens = new double[rules.length];
        set(key, siemens, new double[rules.length]);
        withoutSources(siemens);
        for (int e : varying) {
            siemens[e] = varyingSiemens(e, x);
        }
        return siemens;
    }
}
