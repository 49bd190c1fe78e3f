package wetside.bench;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import wetside.blueprint.Handle;
import wetside.blueprint.Reading;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.map.MachineMap;
import wetside.plant.Balance;
import wetside.plant.Plant;
import wetside.run.Action;
import wetside.run.Run;

/** A machine under somebody's hands: what is done to it, what it reads since, and what was noticed. Used by one thread. */
final class Course implements Script.Hands {
    private final Subject subject;
    private final Twins twins;
    private final List<Reading> readings;
    private final List<Handle> handles;
    private final History history;
    private final Siblings siblings;
    private final Logbook book = new Logbook();
    private double[] spoken;

    /** What there is to see of it; nothing in it changes any more. */
    record Moment(
            double time,
            boolean compared,
            double[] values,
            double[] handles,
            double[] levels,
            double[] flows,
            List<Logbook.Event> events,
            List<String> broken,
            String balance) {}

    Course(Subject subject) {
        this.subject = subject;
        Machine machine = subject.installed().machine();
        twins = new Twins(machine);
        readings = List.copyOf(twin().plant().readings().values());
        handles = List.copyOf(twin().plant().handles().values());
        int[] numbers = IntStream.range(0, readings.size())
                .filter(i -> !readings.get(i).isChoice())
                .toArray();
        history = new History(numbers);
        siblings = new Siblings(machine, readings, new History(numbers));
        spoken = values(twin().plant());
        say("Cold, as it stands, fed from the " + subject.installed().feed().word());
    }

    List<Reading> readings() {
        return readings;
    }

    List<Handle> handles() {
        return handles;
    }

    History history() {
        return history;
    }

    /** What sound machines read meanwhile; runs on a thread of its own. */
    Siblings siblings() {
        return siblings;
    }

    private Run twin() {
        return twins.twin();
    }

    double time() {
        return twin().time();
    }

    void say(String words) {
        book.say(time(), words);
    }

    void afresh() {
        twins.afresh();
        siblings.afresh();
        history.clear();
        book.clear();
        spoken = values(twin().plant());
        say(twins.broken().isEmpty() ? "Cold, as it stands" : "Cold, broken as it is");
    }

    void breakPart(String words, String said, boolean compare) {
        twins.breakPart(words, compare);
        say("Broken: " + said);
    }

    void mend() {
        twins.mend();
        say("All mended");
    }

    @Override
    public void set(String handle, String value) {
        twins.move(handle, value);
        siblings.moved(time(), handle, value);
        book.moved(time(), handle, value);
        say(part(handle) + ": " + value);
    }

    @Override
    public void pass(double seconds) {
        twins.pass(seconds);
        write();
    }

    @Override
    public double until(Action.Until action) {
        double gone = twins.until(action);
        write();
        return gone;
    }

    @Override
    public void mark(String name) {
        say(Wording.capital(name));
    }

    private String part(String channel) {
        return Wording.capital(
                subject.installed().machine().component(RunPanel.part(channel)).name());
    }

    /** Writes down what is to be seen now. */
    private void write() {
        double[] now = values(twin().plant());
        Run sound = twins.sound();
        if (history.add(time(), now, sound == null ? null : values(sound.plant()))) {
            siblings.wrote(time());
        }
        for (int i = 0; i < now.length; i++) {
            Reading r = readings.get(i);
            if (r.isChoice() && now[i] != spoken[i] && isTold(r.channel())) {
                say(part(r.channel()) + ": " + r.options().get((int) now[i]));
            }
        }
        spoken = now;
    }

    private static boolean isTold(String channel) {
        return channel.endsWith(".comes") || channel.endsWith(".message") || channel.endsWith(".sound");
    }

    private double[] values(Plant plant) {
        return readings.stream()
                .mapToDouble(r -> plant.read(plant.readings().get(r.channel())))
                .toArray();
    }

    /** @param map whose lines the flows are told for */
    Moment now(MachineMap map) {
        Plant plant = twin().plant();
        Balance b = plant.balance();
        return new Moment(
                time(),
                twins.sound() != null,
                values(plant),
                handles.stream().mapToDouble(h -> plant.slot(h.slot())).toArray(),
                plant.blueprint().fluid().vessels().stream()
                        .mapToDouble(v -> plant.slot(v.level()))
                        .toArray(),
                map.flows(twins.measured()),
                book.events(),
                twins.broken(),
                String.format(
                        Locale.ROOT,
                        "water to %s g, heat to %s J",
                        Spoken.figures(Math.max(0.001, Math.abs(1e3 * b.waterResidual()))),
                        Spoken.figures(Math.max(0.001, Math.abs(b.energyResidual())))));
    }

    String scenario(Moment until) {
        return book.scenario(subject.title(), until.broken(), until.time());
    }
}
