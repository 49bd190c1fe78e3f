package wetside.page;

import java.util.List;

/** What a section is made of. Texts are plain; the templates escape them. */
public sealed interface Block {
    /** Running text. */
    record Prose(List<String> paragraphs) implements Block {
        public Prose {
            paragraphs = List.copyOf(paragraphs);
        }

        public Prose(String... paragraphs) {
            this(List.of(paragraphs));
        }
    }

    /** A heading below that of the section. */
    record Heading(String words) implements Block {}

    /** Names and what belongs to them, such as "what for" and its sentence. */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** One line of {@link Facts}. */
    record Fact(String name, String words) {}

    /**
     * Rows under heads that are repeated on every sheet.
     *
     * @param columns heads; figures stand right
     */
    record Table(List<Column> columns, List<Row> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /** @param figures true for numbers, which stand right */
    record Column(String head, boolean figures) {
        public static Column words(String head) {
            return new Column(head, false);
        }

        public static Column figures(String head) {
            return new Column(head, true);
        }
    }

    /**
     * @param level who may, drawn before the first cell; null for none
     * @param strong true for a row that must be seen, such as a reading out of range
     */
    record Row(Level level, boolean strong, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public static Row of(String... cells) {
            return new Row(null, false, List.of(cells));
        }
    }

    /** Numbered, in the order of doing. */
    record Steps(List<Step> steps) implements Block {
        public Steps {
            steps = List.copyOf(steps);
        }
    }

    /**
     * @param level  who may do it
     * @param says   what to do, in a few words
     * @param detail how long, with what; may be empty
     * @param how    lines of how to do it, at most five
     */
    record Step(Level level, String says, String detail, List<String> how) {
        public Step {
            how = List.copyOf(how);
        }
    }

    /** First the rule, then how to keep it. */
    record Caution(Level level, String rule, String how) implements Block {}

    /**
     * A picture.
     *
     * @param svg     a whole {@code svg} element of ours, in the colours of the light theme; a page shows it in the reader's
     * @param alt     what it shows, for who cannot see it
     * @param caption below it; may be empty
     * @param share   of the sheet's width, 0 to 1
     */
    record Drawing(String svg, String alt, String caption, double share) implements Block {
        public Drawing {
            if (!svg.startsWith("<svg ")) {
                throw new IllegalArgumentException(
                        "a drawing is an svg element, not " + svg.substring(0, Math.min(20, svg.length())));
            }
        }
    }

    /** Pictures side by side as far as their shares allow, kept on one sheet. */
    record Drawings(List<Drawing> drawings) implements Block {
        public Drawings {
            drawings = List.copyOf(drawings);
        }
    }

    /** Stops in the order of going, those of a side way set in. */
    record Walk(List<Stop> stops) implements Block {
        public Walk {
            stops = List.copyOf(stops);
        }
    }

    /**
     * @param mark  its number on the drawings; empty for a sentence between stops
     * @param title its name
     * @param place where it sits
     * @param words what there is to say
     * @param depth 0 on the main way, 1 on a way off it ...
     */
    record Stop(String mark, String title, String place, String words, int depth) {}
}
