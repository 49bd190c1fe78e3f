package wetside.cabinet;

import java.util.Locale;
import wetside.drawing.Svg;

/** The outline of a part by its form. */
final class PartShape {
    private final Svg svg;
    private final Frame frame;

    PartShape(Svg svg, Frame frame) {
        this.svg = svg;
        this.frame = frame;
    }

    /** @param ink what it is drawn with: {@code fill="…" stroke="…" …} */
    void draw(Fitted part, String ink) {
        Rect r = frame.box(part);
        switch (part.body().form()) {
            case ROUND -> round(part, r, ink);
            case COIL -> coil(r, ink);
            case BENT -> bent(r, ink);
            default -> rect(r, 2, ink);
        }
    }

    private void round(Fitted part, Rect r, String ink) {
        if (frame.view().isCircle(part)) {
            svg.raw(
                    "<ellipse cx=\"%.1f\" cy=\"%.1f\" rx=\"%.1f\" ry=\"%.1f\" %s/>",
                    r.middleX(), r.middleY(), r.width() / 2, r.height() / 2, ink);
        } else {
            double across = frame.view().liesAcross(part) ? r.height() : r.width();
            rect(r, Math.min(0.36 * across, 0.3 * Math.max(r.width(), r.height())), ink);
        }
    }

    private void rect(Rect r, double corner, String ink) {
        svg.raw(
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" rx=\"%.1f\" %s/>",
                r.x(), r.y(), r.width(), r.height(), corner, ink);
    }

    /** A body with a winding: two turns drawn across the longer side. */
    private void coil(Rect r, String ink) {
        rect(r, 2, ink);
        StringBuilder turns = new StringBuilder();
        boolean tall = r.height() >= r.width();
        for (double at : new double[] {0.3, 0.5, 0.7}) {
            double x = r.x() + r.width() * at;
            double y = r.y() + r.height() * at;
            turns.append(
                    tall
                            ? String.format(Locale.ROOT, "M%.1f %.1fh%.1f", r.x() + 3, y, r.width() - 6)
                            : String.format(Locale.ROOT, "M%.1f %.1fv%.1f", x, r.y() + 3, r.height() - 6));
        }
        svg.raw("<path d=\"%s\" %s/>", turns, ink);
    }

    /** A hose: two walls with a swing; seen end on a ring. */
    private void bent(Rect r, String ink) {
        boolean tall = r.height() > r.width();
        double length = Math.max(r.width(), r.height());
        double thick = Math.min(r.width(), r.height());
        if (length < 1.3 * thick) {
            svg.raw("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" %s/>", r.middleX(), r.middleY(), thick / 2, ink);
            return;
        }
        double wall = thick * 0.55;
        String d = tall
                ? swing(r.y(), r.bottom(), r.x(), thick, wall, true)
                : swing(r.x(), r.right(), r.y(), thick, wall, false);
        svg.raw("<path d=\"%s\" stroke-linejoin=\"round\" %s/>", d, ink);
    }

    private static String swing(double from, double to, double side, double thick, double wall, boolean tall) {
        double m = (from + to) / 2;
        double far = side + thick;
        return point("M", from, side, tall)
                + point(" C", m, side, tall) + point(" ", m, far - wall, tall) + point(" ", to, far - wall, tall)
                + point(" L", to, far, tall)
                + point(" C", m, far, tall) + point(" ", m, side + wall, tall) + point(" ", from, side + wall, tall)
                + " Z";
    }

    private static String point(String before, double along, double across, boolean tall) {
        return String.format(Locale.ROOT, "%s%.1f %.1f", before, tall ? across : along, tall ? along : across);
    }
}
