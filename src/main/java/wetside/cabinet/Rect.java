package wetside.cabinet;

/** A rectangle in a picture; x to the right, y downwards. */
public record Rect(double x, double y, double width, double height) {
    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    double middleX() {
        return x + width / 2;
    }

    double middleY() {
        return y + height / 2;
    }

    boolean has(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }

    /** How deep two overlap, negative when they are apart. */
    double overlap(Rect other) {
        return Math.min(
                Math.min(right(), other.right()) - Math.max(x, other.x),
                Math.min(bottom(), other.bottom()) - Math.max(y, other.y));
    }
}
