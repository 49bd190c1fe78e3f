/**
 * The kinds of component: one file each, holding all that is known of a kind that a computer can use: its ports and
 * parameters, its physics, its controls, its faults and how often they come. The words (how to know it, how to test it,
 * cautions) lie beside it in {@code resources/wetside/kind/}.
 *
 * <p>A kind writes its physics into a {@link wetside.blueprint.Blueprint}; it knows no solver. A fault only moves
 * parameters; no physics in here asks whether a part is faulty. Start at {@link wetside.kind.Kind}.
 */
package wetside.kind;
