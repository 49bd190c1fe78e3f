package wetside.map;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import wetside.drawing.Theme;

/** What a line carries, as far as a person who follows it is concerned. */
public enum Layer {
    WATER(Theme.Token.WATER),
    STEAM(Theme.Token.STEAM),
    /** What leaves unused: let off by a valve that relieves, or emptied. */
    DRAIN(Theme.Token.DRAIN),
    /** Mains, and the low voltage that feeds things. */
    CURRENT(Theme.Token.CURRENT),
    /** Capillaries and fittings nothing flows through, and wires that only tell. */
    SENSING(Theme.Token.SENSING);

    private final Theme.Token colour;

    Layer(Theme.Token colour) {
        this.colour = colour;
    }

    Theme.Token colour() {
        return colour;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Layer::word).toList();
    }
}
