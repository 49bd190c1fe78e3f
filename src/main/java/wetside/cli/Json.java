package wetside.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import wetside.casework.Installed;

/** The one way JSON is written. */
final class Json {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    private static final MathContext SIX = new MathContext(6);

    private Json() {}

    static String print(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /** A number with six significant digits; NaN and infinities become null, which JSON can say. */
    static Object number(double v) {
        if (Double.isNaN(v) || Double.isInfinite(v)) {
            return null;
        }
        return new BigDecimal(v).round(SIX).doubleValue();
    }

    /** Which machine an answer is about; more can be put in. */
    static Map<String, Object> machine(Installed installed) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("machine", installed.machine().identity().title());
        m.put("revision", installed.machine().identity().revision());
        if (!installed.machine().identity().supply().isEmpty()) {
            m.put("builtFor", installed.machine().identity().supply());
        }
        m.put("fedFrom", installed.source());
        return m;
    }
}
