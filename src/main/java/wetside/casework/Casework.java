package wetside.casework;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.plant.Plant;
import wetside.procedure.Procedures;
import wetside.procedure.Trial;
import wetside.run.Draws;
import wetside.run.Scenario;

/**
 * One machine as it stands, made ready for fault finding: which causes it can have, which questions it can be asked, and how
 * each cause would answer each question once the twin has been run.
 */
public final class Casework {
    /** Seed of all draws; the same machine gives the same library everywhere. */
    private static final long SEED = 20_161_125;
    /** Parts scatter wider than their makers promise, nobody knows by how much: assumed. */
    public static final double WIDER = 1.3;

    private final Machine machine;
    private final List<Candidate> candidates;
    private final List<Asking> askings;
    private final Trial trial;
    private final Draws draws;

    private Casework(Machine machine, Procedures procedures) {
        this.machine = machine;
        candidates = Candidates.of(machine);
        trial = new Trial(procedures, machine);
        Plant plant = Plant.of(Kinds.blueprint(machine));
        askings = trial.procedures().stream()
                .map(p -> Asking.of(p, machine, plant))
                .toList();
        draws = new Draws(machine, SEED).wider(WIDER);
    }

    private Casework(Casework whole, List<Candidate> candidates, Trial trial) {
        machine = whole.machine;
        this.candidates = candidates;
        askings = whole.askings;
        draws = whole.draws;
        this.trial = trial;
    }

    /** The same causes and questions, but only some readings are simulated, and only what leads to them. */
    public Casework reading(Collection<String> readings) {
        return new Casework(this, candidates, trial.reading(readings));
    }

    /** The same machine, but only some causes are thought of; that nothing is wrong always is. */
    public Casework about(Collection<String> causes) {
        List<Candidate> some = candidates.stream()
                .filter(c -> c.fault().isEmpty() || causes.contains(c.cause().id()))
                .toList();
        return new Casework(this, some, trial);
    }

    /** What a cause is called. */
    public String cause(int position) {
        return candidates.get(position).cause().id();
    }

    /** The same with some causes doing something else, as a mistake of ours in a kind would have it. */
    Casework mistaken(UnaryOperator<Candidate> other) {
        return new Casework(this, candidates.stream().map(other).toList(), trial);
    }

    /** @param machine installed: its supply, socket and surroundings set */
    public static Casework of(Machine machine, Procedures procedures) {
        return new Casework(machine, procedures);
    }

    public Machine machine() {
        return machine;
    }

    public List<Candidate> candidates() {
        return candidates;
    }

    public List<Asking> askings() {
        return askings;
    }

    public Optional<Asking> asking(String id) {
        return askings.stream().filter(a -> a.question().id().equals(id)).findFirst();
    }

    /** A library without any draws yet. */
    public Library empty() {
        return new Library(
                candidates.stream().map(Candidate::cause).toList(),
                askings.stream().map(Asking::question).toList(),
                Signatures.empty(candidates.size(), askings.size()));
    }

    Draws draws() {
        return draws;
    }

    /** Whether the reading at a position is simulated. */
    boolean simulates(int question) {
        return trial.reads(question);
    }

    /** Whether every reading is simulated. */
    boolean simulatesAll() {
        return IntStream.range(0, askings.size()).allMatch(this::simulates);
    }

    /** What the machine can be taken through, by name. */
    public Map<String, Scenario> routines() {
        return trial.repertoire().routines();
    }

    /** A routine and all that come before it. */
    List<String> leadingTo(String routine) {
        return trial.repertoire().leadingTo(routine).stream()
                .map(Scenario::name)
                .toList();
    }

    /** Readings of one draw of one cause, as the library keeps them; NaN for those not simulated. */
    float[] row(Machine drawn, Candidate candidate, int k) {
        Machine broken = candidate.in(drawn, draws.severity(candidate.cause().id(), k));
        double[] values = trial.values(broken);
        float[] row = new float[values.length];
        for (int i = 0; i < row.length; i++) {
            row[i] = askings.get(i).kept(values[i]);
        }
        return row;
    }
}
