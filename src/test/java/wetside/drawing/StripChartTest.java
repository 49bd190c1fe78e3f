package wetside.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Charts as people read them: no label on another, nothing outside, figures as the design wants them. */
class StripChartTest {
    private static final Pattern TEXT = Pattern.compile(
            "<text x=\"([\\d.-]+)\" y=\"([\\d.-]+)\" text-anchor=\"(\\w+)\" font-size=\"([\\d.]+)\"[^>]*>([^<]*)</text>");

    /** A label and the room it takes. */
    private record Label(String words, double left, double right, double top, double bottom) {
        boolean touches(Label other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    private static List<Label> labels(String svg) {
        List<Label> labels = new ArrayList<>();
        Matcher text = TEXT.matcher(svg);
        while (text.find()) {
            double x = Double.parseDouble(text.group(1));
            double y = Double.parseDouble(text.group(2));
            double size = Double.parseDouble(text.group(4));
            double width = Look.width(text.group(5), size);
            double left = switch (text.group(3)) {
                case "start" -> x;
                case "middle" -> x - width / 2;
                default -> x - width;
            };
            labels.add(new Label(text.group(5), left, left + width, y - 0.75 * size, y + 0.2 * size));
        }
        return labels;
    }

    private static StripChart.Line line(String name, double... values) {
        return new StripChart.Line(name, values, "ends at " + values[values.length - 1], new double[0]);
    }

    private static String chart(List<StripChart.Mark> marks) {
        double[] minutes = {0, 10, 20, 30, 40};
        return StripChart.draw(
                new StripChart.Title("A title <with> signs & more", "what it is"),
                minutes,
                marks,
                List.of(
                        new StripChart.Strip(
                                "bar",
                                StripChart.Medium.WATER,
                                List.of(),
                                List.of(line("pump gauge of the machine on the left", 0, 8.5, 8.6, Double.NaN, 0.1))),
                        new StripChart.Strip(
                                "°C",
                                StripChart.Medium.SENSING,
                                List.of(),
                                List.of(
                                        line("a display with a very long name indeed, for once", 20, 90, 96, 96, 96),
                                        line("group temperature", 20, 40, 60, 70, 80),
                                        line("another", -5, 118, 124, 124, 124))),
                        new StripChart.Strip(
                                "g/s", StripChart.Medium.DRAIN, List.of(), List.of(line("nothing", 0, 0, 0, 0, 0))),
                        new StripChart.Strip(
                                "",
                                StripChart.Medium.CURRENT,
                                List.of("dark", "flashing", "steady"),
                                List.of(line("lamp", 0, 2, 2, 1, 1)))));
    }

    private static List<StripChart.Mark> crowd() {
        return IntStream.range(0, 14)
                .mapToObj(
                        i -> new StripChart.Mark(i < 7 ? 0.3 * i : 40 - 0.2 * (13 - i), "thing number " + i + " done"))
                .toList();
    }

    @Test
    void noLabelTouchesAnotherAndAllLieInside() {
        String svg = chart(crowd());
        double height = Double.parseDouble(svg.replaceFirst("(?s).*?viewBox=\"0 0 960 (\\d+)\".*", "$1"));
        List<Label> labels = labels(svg);
        assertThat(labels).hasSizeGreaterThan(40);
        for (Label one : labels) {
            assertThat(one.left).as(one.words).isNotNegative();
            assertThat(one.right).as(one.words).isLessThanOrEqualTo(960);
            assertThat(one.bottom).as(one.words).isLessThanOrEqualTo(height);
            for (Label other : labels) {
                assertThat(one != other && one.touches(other))
                        .as(one + " and " + other)
                        .isFalse();
            }
        }
    }

    @Test
    void everythingDoneHasALineAlsoWhereItsWordsFindNoRoom() {
        String svg = chart(crowd());
        assertThat(svg.split("stroke-dasharray=\"3 3\"")).hasSize(15);
        assertThat(svg).contains("thing number 0 done", "thing number 12 done").doesNotContain("thing number 13");
    }

    @Test
    void figuresAreTabularSizesLegibleAndSignsEscaped() {
        String svg = chart(List.of());
        assertThat(svg)
                .contains(
                        "font-variant-numeric:tabular-nums lining-nums",
                        "<title>A title &lt;with&gt; signs &amp; more");
        Matcher size = Pattern.compile("font-size=\"([\\d.]+)\"").matcher(svg);
        while (size.find()) {
            assertThat(Double.parseDouble(size.group(1))).isGreaterThanOrEqualTo(12.5);
        }
        assertThat(svg).doesNotContain("NaN", "Infinity");
    }

    @Test
    void aGapInTheReadingsIsAGapInTheLine() {
        Matcher path = Pattern.compile("<path d=\"([^\"]*)\"").matcher(chart(List.of()));
        assertThat(path.find()).isTrue();
        assertThat(path.group(1).split("M")).hasSize(3);
    }

    @Test
    void secondAndThirdLinesOfAStripAreDashedAndDotted() {
        assertThat(chart(List.of())).contains("dashed, ends at 80", "dotted, ends at 124", "stroke-dasharray=\"8 4\"");
    }

    @Test
    void axesCountInRoundNumbers() {
        assertThat(Axis.over(0, 8.7, 4)).isEqualTo(new Axis(0, 10, 5, List.of()));
        assertThat(Axis.over(80, 124, 4)).isEqualTo(new Axis(80, 140, 20, List.of()));
        assertThat(Axis.over(0, 0.117, 4).label(0.1)).isEqualTo("0.10");
        assertThat(Axis.over(-0.3, 0.4, 4).label(-0.2)).isEqualTo("−0.2");
        assertThat(Axis.over(5, 5, 4).high()).isGreaterThan(5);
        assertThat(Axis.upTo(42.6, 8).ticks()).containsExactly(0, 10, 20, 30, 40);
        assertThat(Axis.of(List.of("dark", "lit")).ticks()).containsExactly(0, 1);
    }
}
