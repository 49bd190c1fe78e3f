package wetside.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** A small change of the file moves little. Limits are our own, set where the maps of today stay below. */
class StabilityTest {
    static List<String> machines() {
        return MachineFile.names();
    }

    private static Machine machine(String name) {
        return MachineFile.bundled(name, Kinds.declarations()).newest();
    }

    @ParameterizedTest
    @MethodSource("machines")
    void takingOnePartAwayLeavesMostWhereTheyWere(String name) {
        Machine machine = machine(name);
        double sum = 0;
        int count = 0;
        for (String id : Stability.leaves(machine)) {
            for (double move : Stability.moves(machine, Stability.without(machine, id), MachineMap.WET)) {
                sum += move;
                count++;
            }
        }
        assertThat(count == 0 ? 0 : sum / count)
                .as("%s: mean move of a part as a share of the width", name)
                .isLessThan(0.15);
    }

    @ParameterizedTest
    @MethodSource("machines")
    void anotherNameOfTheSameLengthMovesNothing(String name) {
        Machine machine = machine(name);
        Component pump = machine.components().stream()
                .filter(c ->
                        c.kind().name().contains("boiler") || c.kind().name().contains("block"))
                .findFirst()
                .orElseThrow();
        Component.Place p = pump.place();
        String other = new StringBuilder(p.name()).reverse().toString();
        Component.Place renamed =
                new Component.Place(other, p.xyz(), p.size(), p.behind(), p.mark(), p.part(), p.roles(), p.station());
        Machine changed = machine.with(new Component(pump.id(), pump.kind(), pump.values(), spreads(pump), renamed));
        double[] moves = Stability.moves(machine, changed, MachineMap.WET);
        assertThat(moves[moves.length - 1]).as(name).isLessThan(0.02);
    }

    private static wetside.machine.Spread[] spreads(Component c) {
        wetside.machine.Spread[] all = new wetside.machine.Spread[c.values().length];
        for (int i = 0; i < all.length; i++) {
            all[i] = c.spread(i);
        }
        return all;
    }

    @Test
    void wiresInAnotherOrderMoveNothingAmongThePipes() {
        Machine machine = machine("twin-boiler-lever");
        List<Machine.Join> wires = new ArrayList<>(machine.joins().wires());
        Collections.reverse(wires);
        Machine changed = new Machine(
                machine.identity(),
                machine.components(),
                new Machine.Joins(
                        machine.joins().lines(),
                        wires,
                        machine.joins().contacts(),
                        machine.joins().linkages()));
        double[] moves = Stability.moves(machine, changed, MachineMap.WET);
        assertThat(moves[moves.length - 1]).isZero();
    }
}
