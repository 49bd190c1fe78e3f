package wetside.tour;

import java.util.List;

/**
 * A walk in words.
 *
 * @param follow   what it follows
 * @param chapters in the order of going; one for water, several where it begins anew
 */
public record Tour(Follow follow, List<Chapter> chapters) {
    public Tour {
        chapters = List.copyOf(chapters);
    }

    /** @param title empty where there is only one */
    public record Chapter(String title, List<Step> steps) {
        public Chapter {
            steps = List.copyOf(steps);
        }
    }

    /** One thing that is said. */
    public sealed interface Step {
        /** 0 on the main way, 1 on a way off it ... */
        int depth();
    }

    /**
     * A part one comes to for the first time.
     *
     * @param component its id in the machine file
     * @param number    as on the drawings
     * @param place     behind which panels, and how to know it
     * @param does      what it does here
     * @param noticed   what one would notice if it failed
     */
    public record Stop(String component, int number, String name, String place, String does, String noticed, int depth)
            implements Step {}

    /** Where the way parts, comes back, ends. */
    public record Turn(String words, int depth) implements Step {}

    public List<Stop> stops() {
        return chapters.stream()
                .flatMap(c -> c.steps().stream())
                .filter(Stop.class::isInstance)
                .map(Stop.class::cast)
                .toList();
    }
}
