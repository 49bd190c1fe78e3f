package wetside.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.machine.Component;
import wetside.machine.Machine;

/** A map in words: for each medium, what follows what; and what hangs on each rail. */
public final class Outline {
    private final MapPlan plan;
    private final Map<String, List<String>> groups = new LinkedHashMap<>();

    private Outline(MapPlan plan) {
        this.plan = plan;
    }

    static Map<String, List<String>> of(MapPlan plan) {
        Outline outline = new Outline(plan);
        for (Layer layer : Layer.values()) {
            outline.chains(layer);
        }
        outline.rails();
        plan.parts().values().stream().filter(p -> !p.inside().isEmpty()).forEach(outline::inside);
        return outline.groups;
    }

    private void add(String group, String line) {
        groups.computeIfAbsent(group, g -> new ArrayList<>()).add(line);
    }

    /** Each way is told once, in chains as long as they go on; where several go on, the others begin anew. */
    private void chains(Layer layer) {
        List<Way> open = new ArrayList<>(
                plan.told().stream().filter(w -> w.layer() == layer).toList());
        while (!open.isEmpty()) {
            Way first = open.stream()
                    .filter(w ->
                            open.stream().noneMatch(o -> o != w && at(o.to()).equals(at(w.from()))))
                    .findFirst()
                    .orElse(open.get(0));
            StringBuilder chain = new StringBuilder(named(at(first.from())));
            Way next = first;
            while (next != null) {
                open.remove(next);
                next.along().forEach(c -> chain.append(" > ").append(named(c.id())));
                chain.append(" > ").append(named(at(next.to())));
                String end = at(next.to());
                next = open.stream()
                        .filter(w -> at(w.from()).equals(end))
                        .findFirst()
                        .orElse(null);
            }
            add(layer.word(), chain.toString());
        }
    }

    private static String at(Machine.End end) {
        return end.component();
    }

    private String named(String id) {
        Component c = plan.machine().component(id);
        return plan.numbers().of(id).orElseThrow() + " " + c.name();
    }

    private void rails() {
        Map<MapPlan.Rail, List<String>> on = new LinkedHashMap<>();
        plan.rails()
                .forEach((end, rail) ->
                        on.computeIfAbsent(rail, r -> new ArrayList<>()).add(named(at(end)) + " (" + end.port() + ")"));
        on.forEach((rail, ends) -> add(rail.earth() ? "earth" : "rail " + rail.name(), String.join(", ", ends)));
    }

    private void inside(MapPlan.Part p) {
        add(
                "touching",
                named(p.component().id()) + ": "
                        + String.join(
                                ", ",
                                p.inside().stream().map(c -> named(c.id())).toList()));
    }
}
