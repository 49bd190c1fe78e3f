package wetside.cabinet;

/** Where a view stands in a picture and how large it is drawn. */
public final class Frame {
    private final View view;
    private final double left;
    private final double top;
    private final double scale;

    /** @param scale picture units a metre */
    public Frame(View view, double left, double top, double scale) {
        this.view = view;
        this.left = left;
        this.top = top;
        this.scale = scale;
    }

    public View view() {
        return view;
    }

    /** The case. */
    public Rect outline() {
        return new Rect(left, top, view.width() * scale, view.height() * scale);
    }

    public Rect box(Fitted part) {
        Rect metres = view.box(part);
        return new Rect(
                left + metres.x() * scale, top + metres.y() * scale, metres.width() * scale, metres.height() * scale);
    }

    double x(double metres) {
        return left + metres * scale;
    }

    double y(double metres) {
        return top + metres * scale;
    }

    double scale() {
        return scale;
    }
}
