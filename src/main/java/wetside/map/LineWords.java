package wetside.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds a place for the words of a line: beside one of its pieces where nothing else is, the longest piece first; where
 * there is none, shorter words, then on the line itself.
 */
final class LineWords {
    private static final double GAP = 5;
    /** Beside an upright line, where an arrow head may stand. */
    private static final double SIDE = 8;

    private static final double STEP = 8;
    private static final double CLEAR = 1.5;

    private final Lettering lettering;
    private final Rect picture;
    private final List<Rect> taken = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();

    private record Piece(int line, Rect box) {}

    LineWords(Lettering lettering, Rect picture, List<Rect> boxes, List<Sheet.Line> lines) {
        this.lettering = lettering;
        this.picture = picture;
        boxes.forEach(b -> taken.add(b.grown(CLEAR)));
        for (int i = 0; i < lines.size(); i++) {
            for (Rect r : lines.get(i).pieces()) {
                pieces.add(new Piece(i, r.grown(CLEAR)));
            }
        }
    }

    /** Room for one of several wordings, the fullest first; null when there is none. */
    Sheet.Words place(int line, Sheet.Line on, List<String> wordings) {
        for (String words : wordings) {
            double w = lettering.width(words) + 2;
            for (Rect piece : longestFirst(on)) {
                for (Rect spot : beside(piece, w)) {
                    if (isFree(spot, -1)) {
                        return take(words, spot, false);
                    }
                }
            }
        }
        String shortest = wordings.get(wordings.size() - 1);
        double w = lettering.width(shortest) + 6;
        for (Rect piece : longestFirst(on)) {
            if (piece.height() == 0 && piece.width() >= w + 8
                    || piece.width() == 0 && piece.height() >= lettering.line() + 8) {
                for (Rect spot : upon(piece, w)) {
                    if (isFree(spot, line)) {
                        return take(shortest, spot, true);
                    }
                }
            }
        }
        return null;
    }

    private Sheet.Words take(String words, Rect spot, boolean onLine) {
        taken.add(spot.grown(CLEAR));
        return new Sheet.Words(List.of(words), spot, onLine);
    }

    private static List<Rect> longestFirst(Sheet.Line on) {
        return on.pieces().stream()
                .sorted(Comparator.comparingDouble((Rect r) -> -(r.width() * 1.5 + r.height())))
                .toList();
    }

    /** Above and below a level piece, right and left of an upright one, from its middle outwards. */
    private List<Rect> beside(Rect piece, double w) {
        List<Rect> spots = new ArrayList<>();
        double h = lettering.line();
        if (piece.height() == 0) {
            for (double x : spread(piece.x(), piece.right() - w)) {
                spots.add(new Rect(x, piece.y() - GAP - h, w, h));
                spots.add(new Rect(x, piece.y() + GAP, w, h));
            }
        } else {
            for (double y : spread(piece.y(), piece.bottom() - h)) {
                spots.add(new Rect(piece.x() + SIDE, y, w, h));
                spots.add(new Rect(piece.x() - SIDE - w, y, w, h));
            }
        }
        return spots;
    }

    private List<Rect> upon(Rect piece, double w) {
        double h = lettering.line();
        if (piece.height() == 0) {
            return spread(piece.x() + 4, piece.right() - w - 4).stream()
                    .map(x -> new Rect(x, piece.y() - h / 2, w, h))
                    .toList();
        }
        return spread(piece.y() + 4, piece.bottom() - h - 4).stream()
                .map(y -> new Rect(piece.x() - w / 2, y, w, h))
                .toList();
    }

    /** From the middle of a range outwards; a range that is too short gives its middle. */
    private static List<Double> spread(double low, double high) {
        double middle = (low + high) / 2;
        if (high <= low) {
            return List.of(middle);
        }
        int steps = (int) ((high - low) / 2 / STEP);
        return IntStream.rangeClosed(0, steps)
                .boxed()
                .flatMap(i -> i == 0
                        ? java.util.stream.Stream.of(middle)
                        : java.util.stream.Stream.of(middle - i * STEP, middle + i * STEP))
                .toList();
    }

    private boolean isFree(Rect spot, int own) {
        return picture.holds(spot)
                && taken.stream().noneMatch(spot::hits)
                && pieces.stream().noneMatch(p -> p.line() != own && spot.hits(p.box()));
    }
}
