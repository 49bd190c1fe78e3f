package wetside.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A map with everything in its place, before it is drawn: what the drawing shows and the tests measure.
 *
 * @param width   of the circuit [px]
 * @param height  of the circuit [px]
 * @param parts   in the order of the machine file
 * @param lines   in the order of the plan
 * @param missing words of lines that found no room, for the legend
 */
record Sheet(
        double width, double height, List<Placed> parts, List<Line> lines, List<Missing> missing, Lettering lettering) {
    /** Whether parts show only their number. */
    boolean numbers() {
        return lettering.numbers();
    }

    /** Words that found no room at their line. */
    record Missing(Way way, String words) {}

    /** @param label where the name stands */
    record Placed(Glyph glyph, double x, double y, Words label) {
        Rect box() {
            return new Rect(x, y, glyph.width, glyph.height);
        }
    }

    /** Lines of text in a box; {@code onLine} when they interrupt their own line. */
    record Words(List<String> lines, Rect box, boolean onLine) {}

    /** A way with its corners, where it parts from others, and its words. */
    record Line(Way way, List<double[]> points, List<double[]> junctions, List<Words> words) {
        List<Rect> pieces() {
            List<Rect> all = new ArrayList<>();
            for (int i = 1; i < points.size(); i++) {
                all.add(Rect.of(points.get(i - 1), points.get(i)));
            }
            return all;
        }
    }

    /** Upper left corner of each part by its id, for comparing maps. */
    Map<String, double[]> places() {
        Map<String, double[]> at = new java.util.LinkedHashMap<>();
        parts.forEach(p -> at.put(p.glyph().part.component().id(), new double[] {p.x(), p.y()}));
        return at;
    }
}
