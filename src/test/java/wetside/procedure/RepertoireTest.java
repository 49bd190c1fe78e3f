package wetside.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Node;
import wetside.run.Action;

/** A machine gets the first way it has parts for, and what needs a part of a station once for each. */
class RepertoireTest {
    private static final Procedures ALL = Procedures.bundled();
    private static final Machine TWIN =
            MachineFile.bundled("twin-boiler-lever", Kinds.declarations()).newest();
    /** Group, lever and cup belong to a group on the left, everything else to the machine. */
    private static final Machine WITH_LEFT_GROUP = TWIN.withAll(
            Set.of("group", "lever", "cup").stream().map(RepertoireTest::atLeft).toList());

    @Test
    void withoutStationsNamesStayAndRolesBecomeParts() {
        Repertoire twin = Repertoire.of(ALL, TWIN);
        assertThat(ALL.routines().keySet()).containsAll(twin.routines().keySet());
        assertThat(find(twin, "blind-disc pressure").reading().channel()).contains("pump-gauge.needle");
        assertThat(find(twin, "brew element resistance").reading().ohmsBetween())
                .allMatch(tip -> tip.startsWith("brew-element."));
    }

    @Test
    void aPhraseIsSaidAsTheWaySaysIt() {
        assertThat(find(Repertoire.of(ALL, TWIN), "blind-disc pressure").how().get(1))
                .isEqualTo("Lift the lever, wait ten seconds, read the pump gauge.");
        assertThat(Phrases.plain("{Start brewing} and {wait}")).isEqualTo("Start brewing and wait");
    }

    @Test
    void whatNeedsAPartOfAStationIsThereForTheStation() {
        Repertoire left = Repertoire.of(ALL, WITH_LEFT_GROUP);
        Procedure pressure = find(left, "blind-disc pressure, left group");
        assertThat(pressure.routine()).isEqualTo("blind disc, left group");
        assertThat(pressure.says()).endsWith(" (left group)");
        assertThat(pressure.ask()).startsWith("Left group: ");
        assertThat(left.leadingTo("blind disc, left group"))
                .extracting("name")
                .containsExactly("cold at rest", "switched on", "warm-up", "blind disc, left group");
        assertThat(ids(left)).contains("power lamp", "steam gauge, hot").doesNotContain("blind-disc pressure");
        assertThat(left.procedures()).hasSameSizeAs(Repertoire.of(ALL, TWIN).procedures());
    }

    @Test
    void whatIsThereOnceBehindPanelsIsLookedAtWithOneGroupAtWork() {
        List<String> two = ids(Repertoire.of(
                ALL,
                MachineFile.bundled("exchanger-two-group", Kinds.declarations()).newest()));
        assertThat(two)
                .contains("leak at the pump, left group", "leak at the flow meter, left group")
                .contains("leak at the flow meter, right group", "blind-disc pressure, right group")
                .doesNotContain("leak at the pump, right group", "blind-disc pressure", "power lamp, left group")
                .doesNotHaveDuplicates();
    }

    @Test
    void aRoleMeansTheFirstUnlessItsStationIsSaid() {
        Machine two =
                MachineFile.bundled("exchanger-two-group", Kinds.declarations()).newest();
        assertThat(two.inRole("cup").map(Component::id)).contains("cup-left");
        assertThat(two.inRole("cup, right group").map(Component::id)).contains("cup-right");
        assertThat(two.inRole("cup, middle group")).isEmpty();
        assertThat(two.inRole("pump, right group")).isEmpty();
        assertThat(two.inRole("pump", "right group").map(Component::id)).contains("pump");
    }

    @Test
    void theFirstWayTheMachineHasPartsForIsTaken() {
        Procedures two = ways("""
                    - steps: [{set: no such switch.arm, to: pressed}, {mark: there}]
                    - steps: [{set: lever.position, to: sideways}, {mark: there}]
                    - steps: [{set: lever.position, to: brew}, {mark: there}]
                    - steps: [{mark: there}]
                """);
        assertThat(Repertoire.of(two, TWIN).routines().get("brew").steps())
                .containsExactly(new Action.Move("lever.position", "brew"), new Action.Mark("there"));
    }

    @Test
    void withoutAWayThereIsNoRoutineAndItIsToldWhy() {
        Procedures none = ways("    - steps: [{set: no such switch.arm, to: pressed}]\n");
        Repertoire repertoire = Repertoire.of(none, TWIN);
        assertThat(repertoire.routines()).isEmpty();
        assertThat(repertoire.procedures()).isEmpty();
        assertThat(repertoire.lacking("brew")).containsExactly("no such switch.arm");
    }

    private static Procedures ways(String ways) {
        Procedures p = new Procedures();
        p.add(Node.read("p.yaml", """
                wetside procedures: 1
                routines:
                  brew:
                    says: brew
                    ways:
                """ + ways.indent(2) + """
                procedures:
                  pressure:
                    sort: look
                    who: owner
                    says: look
                    minutes: 1
                    during: brew
                    read: {reading: pump gauge.needle}
                    answer: {error: 0.1 bar}
                """));
        return p;
    }

    private static Component atLeft(String id) {
        Component c = TWIN.component(id);
        Component.Place p = c.place();
        double[] values = c.values();
        wetside.machine.Spread[] spreads = new wetside.machine.Spread[values.length];
        for (int i = 0; i < values.length; i++) {
            spreads[i] = c.spread(i);
        }
        return new Component(
                id,
                c.kind(),
                values,
                spreads,
                new Component.Place(
                        p.name(), p.xyz(), p.size(), p.behind(), p.mark(), p.part(), p.roles(), "left group"));
    }

    private static List<String> ids(Repertoire repertoire) {
        return repertoire.procedures().stream().map(Procedure::id).toList();
    }

    private static Procedure find(Repertoire repertoire, String id) {
        Map<String, Procedure> byId = repertoire.procedures().stream().collect(Collectors.toMap(Procedure::id, p -> p));
        return byId.get(id);
    }
}
