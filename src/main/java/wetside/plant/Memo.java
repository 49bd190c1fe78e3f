package wetside.plant;

import java.util.Arrays;

/** Computed things by discrete state, looked up without making garbage. */
final class Memo<T extends Memo.Entry> {
    /** Beyond this the state is not as discrete as was thought (a mains voltage that drifts), so start afresh. */
    private static final int MOST = 1024;

    private final Entry[] chains = new Entry[256];
    private int size;

    /** A thing with the state it belongs to. */
    abstract static class Entry {
        final long[] key;
        private Entry next;

        Entry(long[] key) {
            this.key = key.clone();
        }
    }

    /** The thing of this state, or null. */
    @SuppressWarnings("unchecked")
    T find(long[] key) {
        for (Entry e = chains[chain(key)]; e != null; e = e.next) {
            if (Arrays.equals(e.key, key)) {
                return (T) e;
            }
        }
        return null;
    }

    T put(T entry) {
        if (size == MOST) {
            Arrays.fill(chains, null);
            size = 0;
        }
        int chain = chain(entry.key);
        ((Entry) entry).next = chains[chain];
        chains[chain] = entry;
        size++;
        return entry;
    }

    int size() {
        return size;
    }

    private static int chain(long[] key) {
        long h = 0;
        for (long k : key) {
            h = (h ^ k) * 0x9E3779B97F4A7C15L;
            h ^= h >>> 32;
        }
        return (int) (h >>> 17) & 255;
    }
}
