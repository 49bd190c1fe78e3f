package wetside.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.water.Composition;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;

/** Rows of a table of published waters, in the resources beside the tests. */
record WaterTable(Map<String, String> cells) {
    static List<WaterTable> read(String file) {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(WaterTable.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            List<String> head = split(in.readLine());
            List<WaterTable> rows = new ArrayList<>();
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                List<String> cells = split(line);
                Map<String, String> row = new HashMap<>();
                for (int i = 0; i < head.size(); i++) {
                    row.put(head.get(i), cells.get(i));
                }
                rows.add(new WaterTable(row));
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> split(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    String text(String column) {
        return cells.get(column);
    }

    boolean has(String column) {
        return !cells.get(column).isEmpty();
    }

    double number(String column) {
        return has(column) ? Double.parseDouble(cells.get(column)) : Double.NaN;
    }

    double kelvin() {
        return number("T_C") + 273.15;
    }

    ConstantSet set() {
        return text("database").startsWith("wateq4f") ? ConstantSet.STANDARD : ConstantSet.HIGH_TEMPERATURE;
    }

    /** The analysis; 1 mg/l is 1 mg in a kilogram of water, pH is at 25 °C. */
    Composition analysis() {
        Composition totals = new Composition(
                number("in_Ca_mgL") / 40.078e3,
                number("in_Mg_mgL") / 24.305e3,
                number("in_Na_mgL") / 22.990e3,
                number("in_K_mgL") / 39.098e3,
                number("in_Cl_mgL") / 35.45e3,
                number("in_SO4_mgL") / 96.06e3,
                number("in_NO3_mgL") / 62.004e3,
                number("in_SiO2_mgL") / 60.083e3,
                number("in_Alk_mgL_as_CaCO3") / 50.0435e3,
                0);
        return Equilibrium.at(set(), 298.15).sampled(totals, number("in_pH_25C"));
    }
}
