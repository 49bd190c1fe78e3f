/**
 * Water as a chemist sees it: what is dissolved, in which forms, what falls out when it is heated or boiled down, what
 * a treatment changes.
 *
 * <p>Start at {@link wetside.water.Composition} (totals that heating does not change) and
 * {@link wetside.water.Equilibrium} (all forms at one temperature). {@link wetside.water.ConstantSet} holds the two
 * fitted sets of constants; they are never mixed.
 *
 * <p>Not here: the twin, machine files, what a shop asks for. Temperatures in kelvin, contents in mol per kg of water.
 */
package wetside.water;
