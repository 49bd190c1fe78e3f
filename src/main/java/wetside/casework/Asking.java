package wetside.casework;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wetside.blueprint.Reading;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Question;
import wetside.diagnosis.Who;
import wetside.machine.Machine;
import wetside.plant.Plant;
import wetside.procedure.Procedure;
import wetside.procedure.Trial;
import wetside.run.Names;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;

/**
 * A procedure as a question to one machine. Numbers are kept in the unit people speak (°C, bar, g/s), so that a share of a
 * reading means what it says.
 */
public final class Asking {
    /** How far the twin itself may be off, as a share of a reading: assumed until bench data say otherwise. */
    private static final double DISCREPANCY = 0.03;
    /** The same for a temperature in °C: regulators hold what they are set to, whatever the twin thinks of flows. */
    private static final double DISCREPANCY_OF_TEMPERATURE = 0.01;
    /** The same for a meter on parts whose resistance is drawn within its tolerance. */
    private static final double DISCREPANCY_OF_OHMS = 0.005;
    /** The same for a meter on the mains: the house gives it, no law of the twin comes between. */
    private static final double DISCREPANCY_OF_VOLTS = 0.01;

    /** How often the twin has another word than the machine, being off near where one word passes into the next. */
    private static final double DISCREPANCY_OF_WORDS = 0.02;

    private final Procedure procedure;
    private final Dimension dimension;
    private final Unit unit;
    private final Question question;
    private final String caution;

    private Asking(Procedure procedure, Dimension dimension, Unit unit, Question question, String caution) {
        this.caution = caution;
        this.procedure = procedure;
        this.dimension = dimension;
        this.unit = unit;
        this.question = question;
    }

    static Asking of(Procedure p, Machine machine, Plant plant) {
        boolean meter = p.reading().channel().isEmpty();
        Reading reading = meter ? null : Trial.reading(p, plant);
        Dimension dimension = meter ? Dimension.RESISTANCE : dimension(p, reading);
        Unit unit = Display.METRIC.unit(dimension);
        Answering answering;
        if (!meter && reading.isChoice() && p.answer().isNumber() && isRead(p)) {
            answering = new Answering.Choice(reading.options(), p.answer().mistaken(), DISCREPANCY_OF_WORDS);
        } else if (!p.answer().isNumber()) {
            answering = new Answering.Choice(
                    p.answer().words().stream().map(Procedure.Word::word).toList(),
                    p.answer().mistaken(),
                    DISCREPANCY_OF_WORDS);
        } else {
            // a clock or a count has its own error; that of the gauge watched is another quantity
            boolean sees = !meter && dimension == reading.dimension();
            double sd = Math.hypot(sees ? reading.error() : 0, p.answer().error());
            answering = new Answering.Number(
                    unit.symbol(),
                    Math.max(1e-9, sd / unit.factor()),
                    p.answer().relative(),
                    discrepancy(dimension));
        }
        Effort effort = effort(p, machine);
        String caution = effort.hazard() == Hazard.INSIDE || effort.hazard() == Hazard.LIVE
                ? Precautions.about(machine, effort.panels(), p.caution())
                : p.caution();
        return new Asking(p, dimension, unit, new Question(p.id(), p.says(), answering, effort, sharing(p)), caution);
    }

    /** Whether what is taken of a reading is a word where the reading is one, and no time, share or count of it. */
    private static boolean isRead(Procedure p) {
        return switch (p.reading().take()) {
            case LAST, HIGHEST, LOWEST -> true;
            case MEAN, CHANGE, TOTAL, UNTIL_ABOVE, SHARE_ABOVE -> false;
        };
    }

    /**
     * What shares its error: numbers taken in the same way of the same quantity, here or at another station, are the work of
     * the same laws of the twin. Words and the ohms of different parts share nothing.
     */
    private static String sharing(Procedure p) {
        String quantity = p.answer().isNumber() ? p.reading().quantity() : "";
        String taken = switch (p.reading().take()) {
            case LAST, HIGHEST, LOWEST, MEAN -> "value";
            case CHANGE, TOTAL, UNTIL_ABOVE, SHARE_ABOVE -> p.reading().take().name();
        };
        return quantity.isEmpty() ? p.id() : quantity + " " + taken;
    }

    private static double discrepancy(Dimension dimension) {
        return switch (dimension) {
            case TEMPERATURE -> DISCREPANCY_OF_TEMPERATURE;
            case RESISTANCE -> DISCREPANCY_OF_OHMS;
            case VOLTAGE -> DISCREPANCY_OF_VOLTS;
            default -> DISCREPANCY;
        };
    }

    private static Dimension dimension(Procedure p, Reading reading) {
        return switch (p.reading().take()) {
            case UNTIL_ABOVE -> Dimension.TIME;
            case SHARE_ABOVE -> Dimension.RATIO;
            case TOTAL -> reading.dimension() == Dimension.MASS_FLOW ? Dimension.MASS : Dimension.NUMBER;
            case CHANGE ->
                reading.dimension() == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_RISE : reading.dimension();
            case LAST, HIGHEST, LOWEST, MEAN -> reading.dimension();
        };
    }

    private static Effort effort(Procedure p, Machine machine) {
        Set<String> panels = new LinkedHashSet<>();
        Names names = new Names(machine);
        p.inside()
                .forEach(role -> panels.addAll(
                        names.component(role).orElseThrow().place().behind()));
        Hazard hazard = switch (p.hazard()) {
            case NONE -> Hazard.NONE;
            case HOT -> Hazard.CARE;
            case INSIDE -> Hazard.INSIDE;
            case LIVE -> Hazard.LIVE;
        };
        Who who = switch (p.who()) {
            case OWNER -> Who.OWNER;
            case TECHNICIAN -> Who.TECHNICIAN;
            case QUALIFIED -> Who.ELECTRICIAN;
        };
        return new Effort(p.minutes(), 0, panels, hazard, who);
    }

    public Procedure procedure() {
        return procedure;
    }

    /** What can hurt, with what this machine has in reach; "" for nothing. */
    public String caution() {
        return caution.strip();
    }

    public Dimension dimension() {
        return dimension;
    }

    public Question question() {
        return question;
    }

    /** The words it is answered with; none for a number. */
    public List<String> options() {
        return question.answering() instanceof Answering.Choice choice ? choice.options() : List.of();
    }

    /** A simulated value as the library keeps it. */
    public float kept(double value) {
        return (float) (question.answering() instanceof Answering.Number ? unit.fromSi(value) : value);
    }

    /** SI from a value as the library keeps it. */
    public double si(double kept) {
        return unit.toSi(kept);
    }

    public Unit unit() {
        return unit;
    }
}
