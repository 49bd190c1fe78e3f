package wetside.blueprint;

import java.util.List;

/**
 * Something an operator can set: a switch, a lever, a tap, what is put in the group.
 *
 * @param name    {@code component.what}, e.g. {@code lever.position}
 * @param slot    state slot it sets
 * @param options words for 0, 1, 2 ...; empty when any number from {@code least} to {@code most} will do
 */
public record Handle(String name, int slot, List<String> options, double least, double most) {}
