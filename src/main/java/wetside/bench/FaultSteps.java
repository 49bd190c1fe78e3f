package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import wetside.casework.Asking;
import wetside.casework.Candidate;
import wetside.casework.Casework;
import wetside.casework.Precautions;
import wetside.casework.Session;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.plan.Step;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Picture;
import wetside.procedure.Procedure;
import wetside.run.Names;
import wetside.units.Display;

/** A step as a card: who may, what it takes, how, what can hurt, what to expect, where to put the answer. */
final class FaultSteps {
    private static final double RARE = 0.01;

    private final Session session;
    private final FaultCase about;
    private final Display units;
    private final Who who;

    private final Casework casework;

    /** @param session null while nothing has been computed: then nothing is expected either */
    FaultSteps(Casework casework, Session session, FaultCase about, Display units, Who who) {
        this.casework = casework;
        this.session = session;
        this.about = about;
        this.units = units;
        this.who = who;
    }

    /**
     * @param step   as advised, null for one that promises little
     * @param reason why it is asked when that is not the step's own reason, else ""
     */
    FaultView.Step asking(Asking asking, Step step, String reason, String another, List<FaultView.Seen> others) {
        Procedure p = asking.procedure();
        Effort effort = asking.question().effort();
        String id = asking.question().id();
        Observation before = about.observations(casework).about(id).orElse(null);
        FaultExpectation expectation = session == null ? null : new FaultExpectation(without(id), units);
        return new FaultView.Step(
                "ask",
                id,
                Wording.capital(units.prose(p.says())),
                Spoken.level(effort.who()),
                cost(effort, step == null ? effort.minutes() : step.minutes(), p.tool()),
                units.prose(p.ask()),
                p.how().stream().map(units::prose).toList(),
                caution(effort, units.prose(asking.caution())),
                expectation == null
                        ? new FaultView.Expect("", "", "", asking.options(), List.of(), "")
                        : expectation.of(asking, before),
                asking.options().isEmpty() ? pad(asking, before, expectation) : null,
                reason.isEmpty() ? Wording.capital(step.reason()) + "." : reason,
                step == null ? List.of() : leaves(asking, step),
                where(asking),
                another,
                others,
                before != null);
    }

    /** What is expected of a reading follows from all the others. */
    private Session without(String id) {
        return session.observations().about(id).isEmpty()
                ? session
                : session.knowing(session.observations().without(id));
    }

    private FaultView.Pad pad(Asking asking, Observation before, FaultExpectation expectation) {
        double middle = expectation == null ? 0 : expectation.middle(asking);
        double step = FaultExpectation.step(asking, middle, units);
        double error = Spoken.shown(asking, middle + FaultExpectation.instrument(asking, middle), units)
                - Spoken.shown(asking, middle, units);
        String unit = units.unit(asking.dimension()).symbol();
        boolean number = before != null && before.kind() == Observation.Kind.NUMBER;
        return new FaultView.Pad(
                unit,
                number ? Spoken.number(Spoken.shown(asking, before.value(), units), step) : "",
                Spoken.number(step, step),
                Spoken.number(Math.round(Spoken.shown(asking, middle, units) / step) * step, step),
                expectation == null
                        ? ""
                        : "nine of ten within ± " + Spoken.number(error, Math.min(step, 0.1)) + " " + unit);
    }

    FaultView.Step repair(Step step, String another, List<FaultView.Seen> others) {
        List<Candidate> mended = Repair.parts(step.id()).stream()
                .flatMap(part -> session.mending(part).stream())
                .toList();
        List<Words.OfFault> words =
                mended.stream().flatMap(c -> c.words().stream()).toList();
        return new FaultView.Step(
                "repair",
                step.id(),
                Wording.capital(step.words()),
                Spoken.level(step.effort().who()),
                cost(step.effort(), step.minutes(), ""),
                "",
                words.stream()
                        .flatMap(w -> w.prove().stream())
                        .distinct()
                        .map(units::prose)
                        .toList(),
                FaultCard.caution(
                        words.stream().map(Words.OfFault::remedy).toList(),
                        units,
                        Precautions.beforeOpening(
                                casework.machine(), step.effort().panels())),
                null,
                null,
                Wording.capital(step.reason()) + ".",
                leaves(null, step),
                mended.stream()
                        .flatMap(c -> c.component().stream())
                        .findFirst()
                        .map(casework.machine()::component)
                        .map(this::drawn)
                        .orElse(null),
                another,
                others,
                false);
    }

    FaultView.Step callIn(String another, List<FaultView.Seen> others) {
        boolean owner = who == Who.OWNER;
        return new FaultView.Step(
                "call",
                "",
                owner ? "Have the machine brought in, or send a technician" : "Hand it to somebody who may do more",
                Level.OWNER,
                List.of(),
                owner
                        ? "There is nothing more you can do safely from where you are. We will look at it, and we already"
                                + " know what to bring."
                        : "",
                List.of(),
                null,
                null,
                null,
                "Anything else is expected to cost more than it tells.",
                List.of(),
                null,
                another,
                others,
                false);
    }

    private List<String> cost(Effort effort, double minutes, String tool) {
        List<String> cost = new ArrayList<>();
        cost.add(Math.max(1, Math.round(minutes)) + " min");
        if (!tool.isEmpty()) {
            cost.add(tool);
        }
        cost.add(
                effort.panels().isEmpty()
                        ? "case stays shut"
                        : String.join(" and ", FaultCard.panels(casework.machine(), effort.panels())) + " off");
        return cost;
    }

    private FaultView.Caution caution(Effort effort, String says) {
        boolean inside = effort.hazard() == Hazard.INSIDE || effort.hazard() == Hazard.LIVE;
        if (says.isEmpty() && !inside) {
            return null;
        }
        Level level = Spoken.level(effort.who());
        String text = says.isEmpty() ? Precautions.beforeOpening(casework.machine(), effort.panels()) : says;
        String[] parts = text.split("[:.] ", 2);
        String how = parts.length < 2 ? "" : Wording.capital(parts[1]);
        return new FaultView.Caution(level, parts[0], inside ? (how + " " + Precautions.FIRST).strip() : how);
    }

    private List<FaultView.Line> leaves(Asking asking, Step step) {
        return step.outcomes().stream()
                .filter(o -> o.chance() >= RARE)
                .map(o -> new FaultView.Line(
                        o.option().isEmpty() ? between(asking, o) : Wording.capital(o.option()),
                        o.leaves().isEmpty()
                                ? "nothing to find"
                                : o.leaves().get(0).words() + " "
                                        + Spoken.percent(o.leaves().get(0).share()),
                        Spoken.percent(o.chance())))
                .toList();
    }

    private String between(Asking a, Step.Outcome o) {
        if (Double.isInfinite(o.low()) && Double.isInfinite(o.high())) {
            return "Any reading";
        }
        if (Double.isInfinite(o.low())) {
            return "Below " + units.print(a.si(o.high()), a.dimension());
        }
        return Double.isInfinite(o.high())
                ? "Above " + units.print(a.si(o.low()), a.dimension())
                : units.range(a.si(o.low()), a.si(o.high()), a.dimension());
    }

    /** Where to look: the part behind its panel, or else what is read. */
    private FaultView.Where where(Asking asking) {
        Procedure p = asking.procedure();
        Machine machine = casework.machine();
        String role = p.inside().isEmpty()
                ? p.reading()
                        .channel()
                        .map(c -> c.substring(0, Math.max(0, c.lastIndexOf('.'))))
                        .orElse("")
                : p.inside().get(0);
        return role.isEmpty()
                ? null
                : new Names(machine).component(role).map(this::drawn).orElse(null);
    }

    private FaultView.Where drawn(Component part) {
        Block.Drawing drawing =
                Whereabouts.of(about.machine(), casework.machine(), part, 1).orElse(null);
        if (drawing == null) {
            return null;
        }
        String svg = Picture.markup(drawing, false);
        // the page's policy lets no style in an attribute through
        return new FaultView.Where(svg.replaceAll(" style=\"[^\"]*\"", ""), drawing.caption());
    }
}
