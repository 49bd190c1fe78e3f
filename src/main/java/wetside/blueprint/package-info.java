/**
 * The neutral vocabulary in which kinds write down their physics: nodes and branches for water and steam, vessels, heat
 * nodes, resistors and contacts, controls, handles an operator moves and readings a person can take. A plant is compiled
 * from it without knowing any kind.
 *
 * <p>Sign convention, once: flow in a branch is positive from {@code from} to {@code to}; heat and current likewise.
 * Pressures are absolute [Pa], temperatures [K], mass flows [kg/s] in here. Everything that can change while a machine
 * runs lives in one array of numbers, addressed by slots, so that a state is saved, restored and forked by copying one
 * array.
 *
 * <p>Start at {@link wetside.blueprint.Blueprint}.
 */
package wetside.blueprint;
