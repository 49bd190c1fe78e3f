package wetside.tour;

import java.util.ArrayList;
import java.util.List;
import wetside.drawing.PartNumbers;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Wording;

/** Parts and their places as a sentence names them. */
final class Naming {
    private final Machine machine;
    private final PartNumbers numbers;

    Naming(Machine machine, PartNumbers numbers) {
        this.machine = machine;
        this.numbers = numbers;
    }

    int number(Component c) {
        return numbers.of(c.id()).orElse(0);
    }

    /** "the check valve (17)". */
    String the(Component c) {
        String article = c.name().startsWith("the ") ? "" : "the ";
        int number = number(c);
        return article + c.name() + (number == 0 ? "" : " (" + number + ")");
    }

    /** "the tank (5) and the strainer (8)". */
    String all(List<Component> parts) {
        return Wording.inWords(parts.stream().map(this::the).toList());
    }

    /** "rear and left panels off; brass body at the motor's end". */
    String place(Component c) {
        List<String> where = new ArrayList<>();
        List<String> behind = c.place().behind();
        if (!behind.isEmpty()) {
            where.add(panels(behind));
        }
        if (!c.place().mark().isEmpty()) {
            where.add(c.place().mark());
        }
        return String.join("; ", where);
    }

    /** Short where a panel's id is the side it closes, in its full name otherwise. */
    private String panels(List<String> behind) {
        boolean sides = behind.stream()
                .allMatch(id -> machine.identity().panels().stream()
                        .anyMatch(p -> p.id().equals(id) && p.name().contains(id)));
        if (sides) {
            return Wording.inWords(behind) + (behind.size() > 1 ? " panels off" : " panel off");
        }
        List<String> names = machine.identity().panels().stream()
                .filter(p -> behind.contains(p.id()))
                .map(Machine.Panel::name)
                .toList();
        return Wording.inWords(names) + " off";
    }
}
