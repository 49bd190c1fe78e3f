package wetside.tour;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What one follows through the machine. */
public enum Follow {
    WATER("Follow the water"),
    STEAM("Follow the steam"),
    DRAIN("Follow what is let off"),
    CURRENT("Follow the current");

    private final String title;

    Follow(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Follow::word).toList();
    }
}
