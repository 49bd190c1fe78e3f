package wetside.map;

/** A box on the drawing. */
record Rect(double x, double y, double width, double height) {
    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    /** Touching edges do not count. */
    boolean hits(Rect o) {
        return x < o.right() && o.x < right() && y < o.bottom() && o.y < bottom();
    }

    boolean holds(Rect o) {
        return o.x >= x && o.y >= y && o.right() <= right() && o.bottom() <= bottom();
    }

    Rect grown(double by) {
        return new Rect(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    Rect moved(double dx, double dy) {
        return new Rect(x + dx, y + dy, width, height);
    }

    /** The box of a straight piece between two points. */
    static Rect of(double[] a, double[] b) {
        return new Rect(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]));
    }
}
