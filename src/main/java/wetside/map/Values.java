package wetside.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes what was measured beside the lines: once where lines that meet at a fitting all have the same. */
final class Values {
    private final MapPlan plan;
    private final Measured measured;
    private final Sheet sheet;
    private final LineWords words;

    Values(MapPlan plan, Measured measured, Sheet sheet, LineWords words) {
        this.plan = plan;
        this.measured = measured;
        this.sheet = sheet;
        this.words = words;
    }

    void write() {
        Map<Integer, List<String>> wordings = new LinkedHashMap<>();
        for (int i = 0; i < sheet.lines().size(); i++) {
            List<List<String>> all = measured.words(sheet.lines().get(i).way());
            if (!all.isEmpty()) {
                wordings.put(i, all.get(0));
            }
        }
        Set<Integer> done = new HashSet<>();
        for (int i : wordings.keySet()) {
            if (!done.contains(i)) {
                List<Integer> same = alike(i, wordings);
                done.addAll(same);
                write(same, wordings.get(i));
            }
        }
    }

    private void write(List<Integer> lines, List<String> wordings) {
        lines.sort(Comparator.comparingDouble(i -> -length(i)));
        for (int i : lines) {
            Sheet.Words found = words.place(i, sheet.lines().get(i), wordings);
            if (found != null) {
                sheet.lines().get(i).words().add(found);
                return;
            }
        }
        Way way = sheet.lines().get(lines.get(0)).way();
        String where = number(way.from().component()) + "–" + number(way.to().component());
        sheet.missing().add(new Sheet.Missing(way, where + ": " + wordings.get(0)));
    }

    private int number(String component) {
        return plan.numbers().of(component).orElseThrow();
    }

    private double length(int line) {
        return sheet.lines().get(line).pieces().stream()
                .mapToDouble(r -> Math.max(r.width(), r.height()))
                .max()
                .orElse(0);
    }

    /** Lines with the same words that hang together by fittings. */
    private List<Integer> alike(int first, Map<Integer, List<String>> wordings) {
        List<Integer> found = new ArrayList<>(List.of(first));
        for (int k = 0; k < found.size(); k++) {
            Way at = sheet.lines().get(found.get(k)).way();
            for (int i : wordings.keySet()) {
                Way other = sheet.lines().get(i).way();
                if (!found.contains(i) && wordings.get(i).equals(wordings.get(first)) && meet(at, other)) {
                    found.add(i);
                }
            }
        }
        return found;
    }

    private boolean meet(Way a, Way b) {
        return List.of(a.from().component(), a.to().component()).stream()
                .filter(c -> c.equals(b.from().component()) || c.equals(b.to().component()))
                .anyMatch(c -> sheet.parts().stream()
                        .anyMatch(p -> p.glyph().part.component().id().equals(c)
                                && p.glyph().isDot()));
    }
}
