package wetside.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** What takes long to make, kept as long as it is among the last that were asked for; made once however many ask. */
final class Kept<K, V> {
    private final Map<K, Made<V>> made;

    Kept(int most) {
        made = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, Made<V>> eldest) {
                return size() > most;
            }
        };
    }

    private static final class Made<V> {
        private V value;
    }

    V of(K key, Supplier<V> maker) {
        Made<V> place;
        synchronized (made) {
            place = made.computeIfAbsent(key, k -> new Made<>());
        }
        synchronized (place) {
            if (place.value == null) {
                place.value = maker.get();
            }
            return place.value;
        }
    }
}
