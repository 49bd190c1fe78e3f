package wetside.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** Widths against an independent reader of the same fonts: that of the Java platform. */
class TypefaceTest {
    private static double platform(String file, String text) throws Exception {
        try (InputStream in = TypefaceTest.class.getResourceAsStream("/wetside/fonts/" + file + ".ttf")) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
            return font.getStringBounds(text, new FontRenderContext(null, true, true))
                            .getWidth()
                    / 1000;
        }
    }

    @Test
    void textIsAsWideAsThePlatformSaysOrAtMostItsKerningWider() throws Exception {
        for (String text :
                new String[] {"9 Over-pressure valve", "12.5 bar ± 0.3", "Ventilöffnung, Tür", "WAVE To AV"}) {
            assertThat(Typeface.LABEL.width(text, 1))
                    .isCloseTo(platform("encode-sans-semi-condensed-500", text), within(0.05 * text.length()));
            assertThat(Typeface.TEXT.width(text, 1))
                    .isCloseTo(platform("encode-sans-400", text), within(0.05 * text.length()));
        }
        assertThat(Typeface.TEXT.width("hhhhhhhhhh", 1))
                .isCloseTo(platform("encode-sans-400", "hhhhhhhhhh"), within(1e-3));
    }

    @Test
    void semiCondensedIsNarrower() {
        String text = "over-pressure valve";
        assertThat(Typeface.LABEL.width(text, 13)).isLessThan(Typeface.TEXT.width(text, 13));
        assertThat(Typeface.STRONG.width(text, 13)).isGreaterThan(Typeface.TEXT.width(text, 13));
    }

    @Test
    void widthGrowsWithSize() {
        assertThat(Typeface.LABEL.width("tank", 26)).isCloseTo(2 * Typeface.LABEL.width("tank", 13), within(1e-9));
    }

    @Test
    void lettersOutsideLatinOneAndSignsAreShown() {
        assertThat(Typeface.LABEL.shows("Łódź 3 kΩ → ✓ −5 °C")).isTrue();
        assertThat(Typeface.LABEL.shows("水")).isFalse();
    }

    @Test
    void noLineIsWiderThanAskedAndNoWordIsLost() {
        String text = "lets water out into the drain while the closed boiler warms up";
        var lines = Typeface.LABEL.wrapped(text, 13, 120);
        assertThat(lines)
                .allMatch(line -> Typeface.LABEL.width(line, 13) <= 120)
                .hasSizeGreaterThan(2);
        assertThat(String.join(" ", lines)).isEqualTo(text);
    }
}
