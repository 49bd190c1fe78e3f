package wetside.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.ParameterizedTest;

/**
 * Asserts published values and writes them down: one per test class in {@code wetside.published}.
 *
 * <pre>
 * class FrictionPublishedTest {
 *     &#64;RegisterExtension
 *     static final Published published = Published.topic("Pipe friction");
 *
 *     &#64;Test
 *     void moody1944() {
 *         published.check("head loss, 6-inch asphalted cast iron [ft]", "White, Fluid Mechanics, example 6.6",
 *                 4.5, computed, Tolerance.relative(0.02), "friction factor read from the chart to two digits");
 *     }
 * }
 * </pre>
 *
 * When all tests of the class have run and passed, its rows are compared with the section of {@code docs/validation.md}
 * that carries the class's name; a difference fails the class. {@code mvn test -Dtest='*PublishedTest'
 * -Dvalidation.write=true} rewrites the sections instead. A single test method run alone neither compares nor writes.
 * Rows stand in the order of their test method's name, then as recorded, so name methods accordingly. Anything random
 * in such a test must be seeded. {@link ValidationDocTest} sees to it that every class named {@code *PublishedTest}
 * has its section and no section is left over.
 */
public final class Published implements BeforeEachCallback, AfterEachCallback, AfterAllCallback {
    static {
        // rows must read the same on every machine
        Locale.setDefault(Locale.ROOT);
    }

    private final String topic;
    private final Map<String, List<Row>> rows = new TreeMap<>();
    private final Set<Method> run = new HashSet<>();
    private boolean failed;
    private String current;

    private Published(String topic) {
        this.topic = topic;
    }

    record Row(String quantity, String source, String expected, String computed, String error, String tolerance) {}

    /** The recorder of a test class; the topic heads its section of the document. */
    public static Published topic(String topic) {
        return new Published(topic);
    }

    /** Asserts a published number. Name the unit in the quantity, in brackets. */
    public void check(
            String quantity, String source, double expected, double computed, Tolerance tolerance, String reason) {
        double error = computed - expected;
        if (!(Math.abs(error) <= tolerance.allowed(expected))) {
            throw new AssertionError(quantity + " (" + source + "): published " + expected + ", computed " + computed
                    + ", off by " + error + ", allowed " + tolerance.allowed(expected));
        }
        record(new Row(
                quantity,
                source,
                digits(expected, 9),
                digits(computed, 7),
                errorInWords(error, expected),
                tolerance.inWords() + " – " + reason));
    }

    /** Asserts that the largest of many differences stays below a published or agreed limit. */
    public void atMost(String quantity, String source, double limit, double computed, String reason) {
        if (!(computed <= limit)) {
            throw new AssertionError(quantity + " (" + source + "): " + computed + " is above " + limit);
        }
        record(new Row(
                quantity,
                source,
                "≤ " + digits(limit, 3),
                computed < 1e-9 ? "< 1e-9" : digits(computed, 3),
                "",
                reason));
    }

    /** Asserts a published answer that is not a number: a ranking, a regime, a verdict. */
    public void same(String quantity, String source, String expected, String computed) {
        if (!expected.equals(computed)) {
            throw new AssertionError(
                    quantity + " (" + source + "): published \"" + expected + "\", computed \"" + computed + "\"");
        }
        record(new Row(quantity, source, expected, computed, "", "the same"));
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        current = context.getRequiredTestMethod().getName();
    }

    @Override
    public void afterEach(ExtensionContext context) {
        run.add(context.getRequiredTestMethod());
        failed |= context.getExecutionException().isPresent();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        Class<?> test = context.getRequiredTestClass();
        if (failed || !run.containsAll(testsOf(test))) {
            return;
        }
        List<Row> all = rows.values().stream().flatMap(List::stream).toList();
        ValidationDoc doc = ValidationDoc.read();
        String section = ValidationDoc.section(topic, all);
        if (Boolean.getBoolean("validation.write")) {
            doc.with(test.getSimpleName(), section).write();
        } else if (!section.equals(doc.section(test.getSimpleName()))) {
            throw new AssertionError(
                    "docs/validation.md is out of date for " + test.getSimpleName() + ": run mvn test -Dtest="
                            + test.getSimpleName() + " -Dvalidation.write=true and look at the difference");
        }
    }

    private void record(Row row) {
        rows.computeIfAbsent(current, name -> new ArrayList<>()).add(row);
    }

    private static List<Method> testsOf(Class<?> test) {
        return Arrays.stream(test.getDeclaredMethods())
                .filter(m -> m.isAnnotationPresent(Test.class) || m.isAnnotationPresent(ParameterizedTest.class))
                .toList();
    }

    private static String errorInWords(double error, double expected) {
        if (expected == 0) {
            return Math.abs(error) < 1e-9 ? "< 1e-9" : digits(error, 2);
        }
        double share = Math.abs(error / expected);
        return share < 1e-7
                ? "< 1e-7"
                : share < 1e-4
                        ? String.format(Locale.ROOT, "%.0e", error / expected)
                        : digits(error / expected * 100, 2) + " %";
    }

    /** A number with that many significant digits, without exponent where it reads well. */
    static String digits(double value, int significant) {
        if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) {
            return value == 0 ? "0" : Double.toString(value);
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).round(new MathContext(significant)).stripTrailingZeros();
        double size = Math.abs(value);
        return size >= 1e-4 && size < 1e9
                ? rounded.toPlainString()
                : rounded.toString().replace("E", "e");
    }

    static UncheckedIOException unreadable(IOException e) {
        return new UncheckedIOException(e);
    }
}
