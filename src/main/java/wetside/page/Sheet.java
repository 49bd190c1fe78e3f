package wetside.page;

import java.util.List;

/**
 * One printable thing.
 *
 * @param title    the largest words on it
 * @param source   who made it and when, beside the title; may be empty
 * @param plate    which machine, where it stands
 * @param lead     one or two plain sentences before all detail; may be empty
 * @param sections in reading order
 * @param note     small print at the end: what the figures rest on; may be empty
 */
public record Sheet(String title, String source, Plate plate, String lead, List<Section> sections, String note) {
    public Sheet {
        sections = List.copyOf(sections);
    }

    /** The machine as its rating plate; cells are dropped from the right where there is no room. */
    public record Plate(List<Cell> cells) {
        public Plate {
            cells = List.copyOf(cells);
        }

        /** Label, value, label, value ... */
        public static Plate of(String... labelsAndValues) {
            List<Cell> cells = new java.util.ArrayList<>();
            for (int i = 0; i + 1 < labelsAndValues.length; i += 2) {
                cells.add(new Cell(labelsAndValues[i], labelsAndValues[i + 1]));
            }
            return new Plate(cells);
        }

        /** All cells in one line, as it stands at the foot of every printed sheet. */
        public String line() {
            return String.join(" · ", cells.stream().map(Cell::value).toList());
        }
    }

    /** One field of a plate. */
    public record Cell(String label, String value) {}

    /**
     * @param newSheet true to begin it on a sheet of its own in print
     * @param across   true to lay that sheet across
     */
    public record Section(String title, boolean newSheet, boolean across, List<Block> blocks) {
        public Section {
            blocks = List.copyOf(blocks);
        }

        public Section(String title, boolean newSheet, List<Block> blocks) {
            this(title, newSheet, false, blocks);
        }

        public Section(String title, List<Block> blocks) {
            this(title, false, blocks);
        }

        public Section(String title, Block... blocks) {
            this(title, false, List.of(blocks));
        }
    }
}
