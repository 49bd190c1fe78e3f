package wetside.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import wetside.blueprint.Reading;
import wetside.units.Display;
import wetside.units.Unit;

/**
 * One page that watches a run. Sending can block for half a minute when a browser has stopped reading: it is done by the
 * thread of this page's own request, and what that is too late for is left out: the latest picture is the one that is sent.
 * (The web library's own way of sending events goes on for ever with a request whose browser has gone.)
 */
final class Feed {
    private final LiveRun run;
    private final OutputStream out;
    private final Display units;
    private final List<Integer> charted;
    private final Semaphore news = new Semaphore(1);
    private int edition = -1;
    private int row;
    private int bandEdition = -1;
    private int bandRow;
    private int event;
    private volatile boolean closed;

    /** @param charted places of the readings whose course is wanted */
    Feed(LiveRun run, OutputStream out, Display units, List<Integer> charted) {
        this.run = run;
        this.out = out;
        this.units = units;
        this.charted = List.copyOf(charted);
    }

    /** Says that there is something new; never waits. */
    void wake() {
        if (news.availablePermits() == 0) {
            news.release();
        }
    }

    void close() {
        closed = true;
        wake();
    }

    /** Sends until the run or the page is gone. */
    void send() throws InterruptedException {
        try {
            while (!closed) {
                // a picture now and then even when nothing changes shows whether the page is still there
                news.tryAcquire(2, TimeUnit.SECONDS);
                news.drainPermits();
                if (run.isEnded()) {
                    event("over", "ended");
                    return;
                }
                event("picture", json(run.latest()));
            }
        } catch (IOException e) {
            // the page went away: what it was to be told is of no use to anybody
        } finally {
            run.unwatch(this);
        }
    }

    private void event(String kind, String data) throws IOException {
        out.write(("event: " + kind + "\ndata: " + data + "\n\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    private String json(LiveRun.Picture p) {
        StringBuilder json = new StringBuilder("{");
        field(json, "t", number(p.at().time())).append(',');
        field(json, "speed", number(p.speed())).append(',');
        field(json, "pace", number(p.pace())).append(',');
        field(json, "paused", "" + p.paused()).append(',');
        field(json, "hurrying", "" + p.hurrying()).append(',');
        field(json, "compared", "" + p.at().compared()).append(',');
        field(json, "v", values(p.at().values())).append(',');
        field(json, "h", numbers(p.at().handles())).append(',');
        field(json, "l", numbers(p.at().levels())).append(',');
        field(json, "f", numbers(p.at().flows())).append(',');
        field(json, "broken", texts(p.at().broken())).append(',');
        field(json, "balance", text(p.at().balance())).append(',');
        field(json, "trouble", text(p.trouble())).append(',');
        events(json, p);
        rows(json);
        return json.append('}').toString();
    }

    /** Only what came since the last time; all again when the list has begun anew. */
    private void events(StringBuilder json, LiveRun.Picture p) {
        List<Logbook.Event> all = p.at().events();
        boolean anew = all.size() < event;
        int from = anew ? 0 : event;
        List<String> told = new ArrayList<>();
        for (Logbook.Event e : all.subList(from, all.size())) {
            told.add("[" + number(e.time()) + "," + text(units.prose(e.words())) + "]");
        }
        event = all.size();
        field(json, "anew", "" + anew).append(',');
        field(json, "e", "[" + String.join(",", told) + "]").append(',');
    }

    private void rows(StringBuilder json) {
        History.Part part = run.course().history().since(edition, row);
        field(json, "over", "" + (part.edition() != edition)).append(',');
        field(json, "rows", rows(part)).append(',');
        edition = part.edition();
        row = part.next();
        History.Part band = run.course().siblings().band().since(bandEdition, bandRow);
        field(json, "bandOver", "" + (band.edition() != bandEdition)).append(',');
        field(json, "band", rows(band));
        bandEdition = band.edition();
        bandRow = band.next();
    }

    private String rows(History.Part part) {
        List<String> rows = new ArrayList<>();
        for (History.Row r : part.rows()) {
            List<String> cells = new ArrayList<>(List.of(number(r.time())));
            for (float[] values : new float[][] {r.values(), r.sound()}) {
                for (int reading : charted) {
                    cells.add(
                            values == null
                                    ? "null"
                                    : shown(
                                            reading,
                                            values[run.course().history().column(reading)]));
                }
            }
            rows.add("[" + String.join(",", cells) + "]");
        }
        return "[" + String.join(",", rows) + "]";
    }

    private String values(double[] si) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < si.length; i++) {
            all.add(run.course().readings().get(i).isChoice() ? number(si[i]) : shown(i, si[i]));
        }
        return "[" + String.join(",", all) + "]";
    }

    private String shown(int reading, double si) {
        Reading r = run.course().readings().get(reading);
        Unit unit = units.unit(r.dimension());
        return number(unit.fromSi(si));
    }

    private static StringBuilder field(StringBuilder json, String name, String value) {
        return json.append('"').append(name).append("\":").append(value);
    }

    private static String numbers(double[] values) {
        List<String> all = new ArrayList<>();
        for (double v : values) {
            all.add(number(v));
        }
        return "[" + String.join(",", all) + "]";
    }

    private static String number(double v) {
        if (Double.isNaN(v) || Double.isInfinite(v)) {
            return "null";
        }
        return v == Math.rint(v) && Math.abs(v) < 1e9 ? Long.toString((long) v) : String.format(Locale.ROOT, "%.5g", v);
    }

    private static String texts(List<String> texts) {
        return "[" + String.join(",", texts.stream().map(Feed::text).toList()) + "]";
    }

    private static String text(String words) {
        StringBuilder out = new StringBuilder("\"");
        for (char c : words.toCharArray()) {
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(' ');
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
