package wetside.drawing.symbol;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The graphic symbol of a kind.
 *
 * @param kind   name of the kind
 * @param form   how it takes part in a map
 * @param width  of its box [px]; a port at 0 or at the width lies on the left or right edge
 * @param height of its box [px]
 * @param shapes what is drawn
 * @param ports  places of the ports, on the edges of the box
 */
public record Symbol(String kind, Form form, double width, double height, List<Shape> shapes, Map<String, Spot> ports) {

    /** How a symbol takes part in a map. */
    public enum Form {
        /** A part with its own place. */
        PART,
        /** A fitting where lines meet: no more than a dot. */
        DOT,
        /** A piece of the line itself, such as a hose or a lead. */
        LINE,
        /** A boiler: drawn with its level, and with what sits in it. */
        VESSEL,
        /** A box whose terminals are named. */
        TERMINALS
    }

    /** How a shape is drawn. */
    public enum Weight {
        USUAL,
        THIN,
        THICK,
        DASHED,
        SOLID
    }

    /** A place in the box. */
    public record Spot(double x, double y) {}

    /** An SVG element without its colours: tag, geometry in file order, text. */
    public record Shape(String tag, Weight weight, Map<String, String> geometry, String text) {}

    public Optional<Spot> port(String name) {
        return Optional.ofNullable(ports.get(name));
    }
}
