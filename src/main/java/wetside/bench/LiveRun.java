package wetside.bench;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import wetside.blueprint.Handle;
import wetside.map.MachineMap;
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

    private final Subject subject;
    private final MachineMap map;
    private final LinkedBlockingQueue<Runnable> orders = new LinkedBlockingQueue<>(200);
    private final List<Feed> feeds = new CopyOnWriteArrayList<>();
    private final Script script = new Script();
    private final Course course;

    private double speed = 1;
    private double pace;
    private boolean paused;
    private long lastWatched = System.nanoTime();
    private long lastTouched = System.nanoTime();
    private volatile boolean ended;
    private volatile Picture latest;
    private String trouble = "";

    /** What there is to see at one moment; nothing in it changes any more. */
    record Picture(double speed, double pace, boolean paused, boolean hurrying, String trouble, Course.Moment at) {}

    /** @param map whose lines the flows are told for */
    LiveRun(Subject subject, MachineMap map) {
        this.subject = subject;
        this.map = map;
        course = new Course(subject);
        latest = picture();
    }

    Subject subject() {
        return subject;
    }

    /** The machine with what was done to it and read on it. */
    Course course() {
        return course;
    }

    Picture latest() {
        return latest;
    }

    boolean isEnded() {
        return ended;
    }

    void end() {
        ended = true;
        course.siblings().end();
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
            course.set(handle.name(), value);
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
            script.clear();
            course.afresh();
            course.say("Brought to: " + name);
            script.write(chain);
            paused = false;
        });
    }

    boolean coldAgain() {
        return order(() -> {
            script.clear();
            course.afresh();
        });
    }

    /** @param words as {@link wetside.casework.Installed#broken} takes them */
    boolean breakPart(String words, String said, boolean compare) {
        return order(() -> course.breakPart(words, said, compare));
    }

    boolean mend() {
        return order(course::mend);
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
                end();
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
            end();
        }
        if (System.nanoTime() - lastTouched > FORGOTTEN * 1e9) {
            paused = true;
        }
    }

    private void advance(double real) {
        double from = course.time();
        long start = System.nanoTime();
        if (!script.isDone()) {
            while (!script.isDone() && !paused && isWithin(start)) {
                script.follow(course);
            }
        } else if (!paused) {
            double end = from + real * speed;
            while (end - course.time() > 1e-6 && isWithin(start)) {
                course.pass(Math.min(end - course.time(), 1));
            }
        }
        pace = real > 0 ? 0.7 * pace + 0.3 * Math.max(0, course.time() - from) / real : pace;
    }

    private static boolean isWithin(long start) {
        return System.nanoTime() - start < BUDGET * 1e9;
    }

    private Picture picture() {
        return new Picture(speed, pace, paused, !script.isDone(), trouble, course.now(map));
    }

    /** What was done so far, as a scenario file. */
    String scenario() {
        return course.scenario(latest.at());
    }
}
