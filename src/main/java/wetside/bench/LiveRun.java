package wetside.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import wetside.blueprint.Handle;
import wetside.blueprint.Reading;
import wetside.casework.Installed;
import wetside.machine.Machine;
import wetside.map.MachineMap;
import wetside.map.Measured;
import wetside.plant.Balance;
import wetside.plant.Plant;
import wetside.run.Action;
import wetside.run.Run;
import wetside.run.Scenario;

/**
 * A twin that runs on a thread of its own, touched and watched by one page. Whoever touches it leaves an order; the thread
 * takes orders between steps. What is to be seen is left as pictures that watchers fetch themselves: nothing here waits for
 * any of them. It ends when nobody has watched for a while.
 */
final class LiveRun implements Runnable {
    /** Real seconds between pictures. */
    private static final double TICK = 0.1;
    /** Of a tick, at most this much is spent on the twin [s]: orders and pictures go on however fast it is to run. */
    private static final double BUDGET = 0.12;
    /** Nobody has watched for so long: the page is gone [s]. */
    static final double GONE = 20;
    /** Nobody has touched it for so long: it pauses [s]. */
    private static final double FORGOTTEN = 1800;

    private static final double SLOWEST = 1;
    private static final double FASTEST = 200;
    private static final int MOST_FEEDS = 3;
    private static final int MOST_EVENTS = 500;

    private final Subject subject;
    private final MachineMap map;
    private final LinkedBlockingQueue<Runnable> orders = new LinkedBlockingQueue<>(200);
    private final List<Feed> feeds = new CopyOnWriteArrayList<>();
    private final History history;
    private final List<Event> events = new ArrayList<>();
    private final List<Moved> moves = new CopyOnWriteArrayList<>();
    private final Deque<Action> script = new ArrayDeque<>();
    private final List<String> broken = new ArrayList<>();
    private final List<Reading> readings;
    private final List<Handle> handles;

    private Measured measured;
    private Run sound;
    private double[] spoken;
    private double speed = 1;
    private double pace;
    private boolean paused;
    private long lastWatched = System.nanoTime();
    private long lastTouched = System.nanoTime();
    private volatile boolean ended;
    private volatile Picture latest;
    private String trouble = "";

    /** Something that happened [s]. */
    record Event(double time, String words) {}

    private record Moved(double time, String handle, String value) {}

    /** What there is to see at one moment; nothing in it changes any more. */
    record Picture(
            double time,
            double speed,
            double pace,
            boolean paused,
            boolean hurrying,
            boolean compared,
            double[] values,
            double[] handles,
            double[] levels,
            double[] flows,
            List<Event> events,
            List<String> broken,
            String balance,
            String trouble) {}

    /** @param map whose lines the flows are told for */
    LiveRun(Subject subject, MachineMap map) {
        this.subject = subject;
        this.map = map;
        measured = Measured.cold(subject.installed().machine());
        twin().begin();
        readings = List.copyOf(twin().plant().readings().values());
        handles = List.copyOf(twin().plant().handles().values());
        history = new History(java.util.stream.IntStream.range(0, readings.size())
                .filter(i -> !readings.get(i).isChoice())
                .toArray());
        spoken = values(twin().plant());
        say("Cold, as it stands, fed from the " + subject.installed().feed().word());
        latest = picture();
    }

    Subject subject() {
        return subject;
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

    Picture latest() {
        return latest;
    }

    boolean isEnded() {
        return ended;
    }

    void end() {
        ended = true;
    }

    /** The page that came first goes when there are too many. */
    void watch(Feed feed) {
        feeds.add(feed);
        if (feeds.size() > MOST_FEEDS) {
            feeds.remove(0).close();
        }
    }

    void unwatch(Feed feed) {
        feeds.remove(feed);
    }

    private Run twin() {
        return measured.run();
    }

    /** Leaves an order; false when too many are waiting. */
    private boolean order(Runnable order) {
        return orders.offer(() -> {
            lastTouched = System.nanoTime();
            order.run();
        });
    }

    boolean move(Handle handle, String value) {
        return order(() -> {
            script.clear();
            set(handle.name(), value);
        });
    }

    boolean speed(double times) {
        return order(() -> speed = Math.max(SLOWEST, Math.min(FASTEST, times)));
    }

    boolean pause(boolean stop) {
        return order(() -> paused = stop);
    }

    /** Goes through scenarios from the cold machine as fast as the twin can. */
    boolean bring(String name, List<Scenario> chain) {
        return order(() -> {
            afresh();
            say("Brought to: " + name);
            chain.forEach(s -> script.addAll(s.steps()));
            paused = false;
        });
    }

    boolean coldAgain() {
        return order(this::afresh);
    }

    /** @param words as {@link Installed#broken} takes them */
    boolean breakPart(String words, String said, boolean compare) {
        return order(() -> {
            if (compare && sound == null) {
                sound = twinOf(subject.installed().machine());
            }
            broken.add(words);
            say("Broken: " + said);
            replace();
        });
    }

    boolean mend() {
        return order(() -> {
            broken.clear();
            sound = null;
            say("All mended");
            replace();
        });
    }

    private Machine machine() {
        Machine machine = subject.installed().machine();
        for (String b : broken) {
            machine = Installed.broken(machine, b);
        }
        return machine;
    }

    /** The same water, heat and contacts in a machine with other parts. */
    private void replace() {
        Measured next = Measured.cold(machine());
        take(next.run(), twin());
        measured = next;
    }

    private Run twinOf(Machine machine) {
        Run twin = Measured.cold(machine).run();
        take(twin, twin());
        return twin;
    }

    private static void take(Run to, Run from) {
        to.plant().restore(from.plant().save());
        to.stepper().time(from.time());
        to.stepper().moved();
    }

    private void afresh() {
        script.clear();
        measured = Measured.cold(machine());
        twin().begin();
        sound = sound == null
                ? null
                : Measured.cold(subject.installed().machine()).run();
        history.clear();
        events.clear();
        moves.clear();
        spoken = values(twin().plant());
        say(broken.isEmpty() ? "Cold, as it stands" : "Cold, broken as it is");
    }

    private void set(String handle, String value) {
        twin().move(handle, value);
        if (sound != null) {
            sound.move(handle, value);
        }
        moves.add(new Moved(twin().time(), handle, value));
        say(words(handle) + ": " + value);
    }

    private String words(String handle) {
        String part = RunPanel.part(handle);
        return MachinePages.capital(
                subject.installed().machine().component(part).name());
    }

    private void say(String words) {
        events.add(new Event(twin().time(), words));
        if (events.size() > MOST_EVENTS) {
            events.remove(0);
        }
    }

    @Override
    public void run() {
        long last = System.nanoTime();
        while (!ended) {
            try {
                Runnable order = orders.poll((long) (TICK * 1000), TimeUnit.MILLISECONDS);
                long now = System.nanoTime();
                boolean touched = order != null;
                while (order != null) {
                    order.run();
                    order = orders.poll();
                }
                double passed = Math.min(0.3, (now - last) * 1e-9);
                last = now;
                advance(passed);
                if (touched || passed > 0) {
                    latest = picture();
                    feeds.forEach(Feed::wake);
                }
                forget();
            } catch (InterruptedException e) {
                ended = true;
            } catch (RuntimeException e) {
                trouble = "The twin stopped: " + e.getMessage();
                script.clear();
                paused = true;
                latest = picture();
                feeds.forEach(Feed::wake);
            }
        }
        feeds.forEach(Feed::wake);
    }

    private void forget() {
        if (!feeds.isEmpty()) {
            lastWatched = System.nanoTime();
        }
        if (System.nanoTime() - lastWatched > GONE * 1e9) {
            ended = true;
        }
        if (System.nanoTime() - lastTouched > FORGOTTEN * 1e9) {
            paused = true;
        }
    }

    private void advance(double real) {
        double from = twin().time();
        long start = System.nanoTime();
        if (!script.isEmpty()) {
            while (!script.isEmpty() && !paused && isWithin(start)) {
                follow(script.poll());
            }
        } else if (!paused) {
            double end = from + real * speed;
            while (end - twin().time() > 1e-6 && isWithin(start)) {
                pass(Math.min(end - twin().time(), 1));
            }
        }
        pace = real > 0 ? 0.7 * pace + 0.3 * Math.max(0, twin().time() - from) / real : pace;
    }

    private static boolean isWithin(long start) {
        return System.nanoTime() - start < BUDGET * 1e9;
    }

    /** A piece of what is to be done; what takes long is put back shortened. */
    private void follow(Action action) {
        if (action instanceof Action.Move m) {
            set(m.handle(), m.value());
        } else if (action instanceof Action.Wait w) {
            double now = Math.min(1, w.seconds());
            pass(now);
            if (w.seconds() - now > 1e-6) {
                script.push(new Action.Wait(w.seconds() - now));
            }
        } else if (action instanceof Action.Until u) {
            double before = twin().time();
            double now = Math.min(1, u.atMost());
            twin().go(new Action.Until(u.reading(), u.test(), u.value(), now));
            double gone = twin().time() - before;
            alongside();
            if (gone > now - 1e-6 && u.atMost() - gone > 1e-6) {
                script.push(new Action.Until(u.reading(), u.test(), u.value(), u.atMost() - gone));
            }
        } else if (action instanceof Action.Mark m) {
            say(MachinePages.capital(m.name()));
        }
    }

    private void pass(double seconds) {
        twin().pass(seconds);
        alongside();
    }

    /** The sound machine goes as far, and what was seen is written down. */
    private void alongside() {
        if (sound != null && twin().time() - sound.time() > 1e-9) {
            sound.pass(twin().time() - sound.time());
        }
        double[] now = values(twin().plant());
        history.add(twin().time(), now, sound == null ? null : values(sound.plant()));
        for (int i = 0; i < now.length; i++) {
            Reading r = readings.get(i);
            if (r.isChoice() && now[i] != spoken[i] && isTold(r.channel())) {
                say(words(r.channel()) + ": " + r.options().get((int) now[i]));
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

    private Picture picture() {
        Plant plant = twin().plant();
        double[] positions =
                handles.stream().mapToDouble(h -> plant.slot(h.slot())).toArray();
        double[] levels = plant.blueprint().fluid().vessels().stream()
                .mapToDouble(v -> plant.slot(v.level()))
                .toArray();
        Balance b = plant.balance();
        return new Picture(
                twin().time(),
                speed,
                pace,
                paused,
                !script.isEmpty(),
                sound != null,
                values(plant),
                positions,
                levels,
                map.flows(measured),
                List.copyOf(events),
                List.copyOf(broken),
                String.format(Locale.ROOT, "water %.0e kg, heat %.0e J", b.waterResidual(), b.energyResidual()),
                trouble);
    }

    /** What was done so far, as a scenario file: the command line and this page can do it again. */
    String scenario() {
        Picture now = latest;
        List<Moved> done = List.copyOf(moves);
        StringBuilder yaml = new StringBuilder("wetside scenario: 1\n");
        yaml.append("# ").append(subject.title()).append('\n');
        now.broken().forEach(b -> yaml.append("# broken: --break \"").append(b).append("\"\n"));
        yaml.append("says: \"as done by hand on the bench\"\nsteps:\n");
        double at = 0;
        for (Moved m : done) {
            wait(yaml, m.time() - at);
            at = m.time();
            yaml.append("  - {set: \"")
                    .append(m.handle())
                    .append("\", to: \"")
                    .append(m.value())
                    .append("\"}\n");
        }
        wait(yaml, now.time() - at);
        yaml.append("  - mark: end\n");
        return yaml.toString();
    }

    private static void wait(StringBuilder yaml, double seconds) {
        if (seconds > 0.05) {
            yaml.append(String.format(Locale.ROOT, "  - wait: %.1f s\n", seconds));
        }
    }
}
