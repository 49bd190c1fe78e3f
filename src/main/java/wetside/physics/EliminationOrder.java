package wetside.physics;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * In which order the nodes of a network are eliminated and which links that makes: always the node with the fewest
 * neighbours left, so that a tree makes no new link at all. Depends on what is joined only, not on any resistance.
 */
final class EliminationOrder {
    /** Node eliminated at each place. */
    final int[] nodes;
    /** Place of each node. */
    final int[] places;
    /** Links of place k to later places: {@code first[k]} to {@code first[k + 1] - 1}. */
    final int[] first;
    /** Later place each link leads to. */
    final int[] later;
    /** For each place and each pair of its links, in order: the link between their ends. */
    final int[] meshes;

    /** By what is joined: thousands of networks differ in their resistances only. */
    private static final Map<IntBuffer, EliminationOrder> KNOWN = new ConcurrentHashMap<>();

    private static final int MOST_KNOWN = 256;

    private final long[][] neighbours;

    /** The order for a network; the same again for one joined in the same way. */
    static EliminationOrder of(int count, int[] from, int[] to, int last) {
        IntBuffer key = IntBuffer.allocate(2 + from.length + to.length);
        key.put(count).put(last).put(from).put(to).rewind();
        if (KNOWN.size() >= MOST_KNOWN) {
            KNOWN.clear();
        }
        return KNOWN.computeIfAbsent(key, k -> new EliminationOrder(count, from, to, last));
    }

    private EliminationOrder(int count, int[] from, int[] to, int last) {
        neighbours = neighbours(count, from, to);
        nodes = new int[count];
        places = new int[count];
        first = new int[count + 1];
        later = eliminate(last);
        for (int i = 0; i < later.length; i++) {
            later[i] = places[later[i]];
        }
        meshes = meshes();
    }

    private static long[][] neighbours(int count, int[] from, int[] to) {
        long[][] bits = new long[count][(count + 63) / 64];
        for (int b = 0; b < from.length; b++) {
            if (from[b] != to[b]) {
                bits[from[b]][to[b] >> 6] |= 1L << to[b];
                bits[to[b]][from[b] >> 6] |= 1L << from[b];
            }
        }
        return bits;
    }

    /** Fills everything but the meshes; returns the links, still leading to nodes instead of places. */
    private int[] eliminate(int last) {
        int count = nodes.length;
        int[] degree = new int[count];
        for (int n = 0; n < count; n++) {
            degree[n] = degree(n);
        }
        int[] links = new int[4 * count + 8];
        for (int k = 0; k < count; k++) {
            int node = fewest(degree, k < count - 1 ? last : -1);
            nodes[k] = node;
            places[node] = k;
            degree[node] = Integer.MAX_VALUE;
            int end = listNeighbours(node, first[k], links = roomFor(links, first[k] + count));
            first[k + 1] = end;
            for (int i = first[k]; i < end; i++) {
                join(links[i], node);
                degree[links[i]] = degree(links[i]);
            }
        }
        return Arrays.copyOf(links, first[count]);
    }

    private static int fewest(int[] degree, int except) {
        int best = -1;
        for (int n = 0; n < degree.length; n++) {
            if (n != except && degree[n] != Integer.MAX_VALUE && (best < 0 || degree[n] < degree[best])) {
                best = n;
            }
        }
        return best;
    }

    private int degree(int node) {
        int d = 0;
        for (long word : neighbours[node]) {
            d += Long.bitCount(word);
        }
        return d;
    }

    private int listNeighbours(int node, int start, int[] into) {
        int end = start;
        long[] bits = neighbours[node];
        for (int w = 0; w < bits.length; w++) {
            for (long left = bits[w]; left != 0; left &= left - 1) {
                into[end++] = 64 * w + Long.numberOfTrailingZeros(left);
            }
        }
        return end;
    }

    private static int[] roomFor(int[] array, int size) {
        return size <= array.length ? array : Arrays.copyOf(array, 2 * size);
    }

    /** The neighbour takes over the eliminated node's other neighbours. */
    private void join(int neighbour, int eliminated) {
        long[] mine = neighbours[neighbour];
        long[] others = neighbours[eliminated];
        for (int w = 0; w < mine.length; w++) {
            mine[w] |= others[w];
        }
        mine[neighbour >> 6] &= ~(1L << neighbour);
        mine[eliminated >> 6] &= ~(1L << eliminated);
    }

    private int[] meshes() {
        int size = 0;
        for (int k = 0; k < nodes.length; k++) {
            int d = first[k + 1] - first[k];
            size += d * (d - 1) / 2;
        }
        int[] links = new int[size];
        int at = 0;
        for (int k = 0; k < nodes.length; k++) {
            for (int i = first[k]; i < first[k + 1]; i++) {
                for (int j = i + 1; j < first[k + 1]; j++) {
                    links[at++] = link(later[i], later[j]);
                }
            }
        }
        return links;
    }

    /** Link between two places; the earlier one owns it. */
    int link(int a, int b) {
        int owner = Math.min(a, b);
        int end = Math.max(a, b);
        int i = first[owner];
        while (later[i] != end) {
            i++;
        }
        return i;
    }
}
