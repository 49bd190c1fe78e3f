package wetside.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * Numbers of a run over time, evenly thinned so that a long run needs no more room than a short one. Written by the run's
 * thread, read by watchers'.
 */
final class History {
    private static final int MOST = 2400;
    private static final double FINEST = 0.5;

    private final int[] channels;
    private final List<Row> rows = new ArrayList<>();
    private double spacing = FINEST;
    private int edition;

    /** @param channels places of the readings that are kept */
    History(int[] channels) {
        this.channels = channels.clone();
    }

    /** @param sound the same of the machine without fault, null when none runs beside it */
    record Row(double time, float[] values, float[] sound) {}

    /** @param edition changes when earlier rows are others than before */
    record Part(int edition, int next, List<Row> rows) {}

    /** False when it is too early for another row. */
    synchronized boolean add(double time, double[] values, double[] sound) {
        if (!rows.isEmpty() && time - rows.get(rows.size() - 1).time() < spacing) {
            return false;
        }
        rows.add(new Row(time, kept(values), sound == null ? null : kept(sound)));
        if (rows.size() > MOST) {
            List<Row> half = new ArrayList<>();
            for (int i = 0; i < rows.size(); i += 2) {
                half.add(rows.get(i));
            }
            rows.clear();
            rows.addAll(half);
            spacing *= 2;
            edition++;
        }
        return true;
    }

    private float[] kept(double[] values) {
        float[] kept = new float[channels.length];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = (float) values[channels[i]];
        }
        return kept;
    }

    synchronized void clear() {
        rows.clear();
        spacing = FINEST;
        edition++;
    }

    /** Rows since a place in an edition; all when the edition is another. */
    synchronized Part since(int seen, int from) {
        int first = seen == edition ? Math.min(from, rows.size()) : 0;
        return new Part(edition, rows.size(), List.copyOf(rows.subList(first, rows.size())));
    }

    /** Where a reading is in a row; -1 when it is not kept. */
    int column(int reading) {
        for (int i = 0; i < channels.length; i++) {
            if (channels[i] == reading) {
                return i;
            }
        }
        return -1;
    }
}
