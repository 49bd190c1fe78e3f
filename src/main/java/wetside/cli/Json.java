package wetside.cli;

import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** The one way JSON is written. */
final class Json {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private Json() {}

    static String print(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /** A number with six significant digits; NaN and infinities become null, which JSON can say. */
    static Object number(double v) {
        if (Double.isNaN(v) || Double.isInfinite(v)) {
            return null;
        }
        return new java.math.BigDecimal(v).round(new java.math.MathContext(6)).doubleValue();
    }
}
