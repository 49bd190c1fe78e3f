package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.analysis.Heated;
import wetside.analysis.Ranged;
import wetside.analysis.WaterSheet;
import wetside.feedwater.Advice;
import wetside.feedwater.Forecast;
import wetside.feedwater.Verdict;
import wetside.water.Composition;

/** A water for programs: mg/l, °C, µS/cm. */
final class WaterJson {
    private WaterJson() {}

    static Map<String, Object> of(WaterSheet sheet, Advice advice) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("title", sheet.title());
        Map<String, Object> measured = new LinkedHashMap<>();
        sheet.measured().forEach((c, v) -> measured.put(c.words(), v.said()));
        m.put("measured", measured);
        m.put("assumed", sheet.assumed());
        m.put("constants", advice.set().name().toLowerCase(java.util.Locale.ROOT));
        advice.machine().installed().ifPresent(i -> m.putAll(Json.machine(i)));
        m.putAll(results(advice));
        return m;
    }

    static Map<String, Object> results(Advice advice) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("composition", composition(advice.waters().middle()));
        m.put("conductivity25", range(advice.conductivity().times(1e4)));
        List<Map<String, Object>> heated = new ArrayList<>();
        for (int i = 0; i < advice.heated().size(); i++) {
            Heated h = advice.heated().get(i);
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("place", advice.machine().hot().get(i).name());
            one.put("celsius", Json.number(h.kelvin() - 273.15));
            one.put("pH", range(h.ph()));
            one.put("calciteIndex", range(h.index()));
            one.put("canFall", range(h.potential()));
            one.put("anhydriteIndex", range(h.anhydrite()));
            one.put("conductivity", range(h.conductivity().times(1e4)));
            heated.add(one);
        }
        m.put("heated", heated);
        advice.boiler().ifPresent(b -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("settlesAt", Json.number(b.settles()));
            one.put("limit", Json.number(b.limit()));
            one.put("limitBy", b.binding());
            one.put("daysToLimit", Json.number(b.interval()));
            m.put("boiler", one);
        });
        advice.machine()
                .blindness()
                .ifPresent(b -> m.put("probeBlindUnder", range(b.clean().times(1e4))));
        m.put("forecast", advice.forecasts().stream().map(WaterJson::forecast).toList());
        m.put("verdicts", advice.verdicts().stream().map(WaterJson::verdict).toList());
        return m;
    }

    private static Map<String, Object> forecast(Forecast f) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("place", f.place().name());
        one.put("kgPerYear", range(f.falls()));
        one.put("elementMmPerYear", range(f.element().times(1e3)));
        one.put("wallMmPerYear", range(f.wall().times(1e3)));
        one.put("jetMmPerYear", range(f.jet().times(1e3)));
        one.put("yearsToMark", range(f.years()));
        return one;
    }

    private static Map<String, Object> verdict(Verdict v) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("concern", v.concern());
        one.put("grade", v.grade().word());
        one.put("value", v.value());
        one.put("reason", v.reason());
        return one;
    }

    static Map<String, Object> composition(Composition c) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("calcium", Json.number(c.calcium() * 40.078e3));
        m.put("magnesium", Json.number(c.magnesium() * 24.305e3));
        m.put("sodium", Json.number(c.sodium() * 22.990e3));
        m.put("potassium", Json.number(c.potassium() * 39.098e3));
        m.put("bicarbonate", Json.number(c.alkalinity() * 61.016e3));
        m.put("chloride", Json.number(c.chloride() * 35.45e3));
        m.put("sulfate", Json.number(c.sulfate() * 96.06e3));
        m.put("nitrate", Json.number(c.nitrate() * 62.004e3));
        m.put("silica", Json.number(c.silica() * 60.083e3));
        return m;
    }

    private static Map<String, Object> range(Ranged r) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("low", Json.number(r.low()));
        m.put("middle", Json.number(r.middle()));
        m.put("high", Json.number(r.high()));
        if (!r.mainly().isEmpty()) {
            m.put("mainly", r.mainly());
        }
        return m;
    }
}
