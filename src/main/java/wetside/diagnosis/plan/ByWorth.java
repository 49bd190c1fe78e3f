package wetside.diagnosis.plan;

/**
 * Repairs in the order of what they are worth, the best first, sorted only as far as somebody asks: most plans end after a
 * few. A heap of whole numbers, as this runs for every outcome of every question.
 */
final class ByWorth {
    private static final long PLACE = 0xFFFF_FFFFL;

    private final long[] heap;
    private final int[] order;
    private int left;
    private int sorted;
    private boolean heaped;

    ByWorth(int most) {
        heap = new long[most];
        order = new int[most];
    }

    void clear() {
        left = 0;
        sorted = 0;
        heaped = false;
    }

    /** Worth is compared to seven digits; of equals the one with the lower number comes first. */
    void add(int repair, double worth) {
        heap[left++] = (long) Float.floatToIntBits((float) worth) << 32 | PLACE - repair;
    }

    boolean has(int place) {
        return place < sorted + left;
    }

    int get(int place) {
        while (sorted <= place) {
            order[sorted++] = (int) (PLACE - (take() & PLACE));
        }
        return order[place];
    }

    private long take() {
        if (!heaped) {
            for (int i = left / 2 - 1; i >= 0; i--) {
                sink(i);
            }
            heaped = true;
        }
        long best = heap[0];
        heap[0] = heap[--left];
        sink(0);
        return best;
    }

    private void sink(int from) {
        int at = from;
        long key = heap[at];
        while (2 * at + 1 < left) {
            int child = 2 * at + 1;
            child += child + 1 < left && heap[child + 1] > heap[child] ? 1 : 0;
            if (heap[child] <= key) {
                break;
            }
            heap[at] = heap[child];
            at = child;
        }
        heap[at] = key;
    }
}
