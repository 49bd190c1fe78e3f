/**
 * The map of a machine: its circuits as a drawing that lays itself out.
 *
 * <p>What a line carries is computed from how its ends are joined ({@link wetside.map.Media}), the plan of what to draw
 * from the machine ({@link wetside.map.MapPlan}), places by layered layout with fixed ports ({@link
 * wetside.map.Placing}), pressures and temperatures from a run ({@link wetside.map.Measured}). Where parts sit in the
 * case is not shown here; symbols come from {@code drawing.symbol}.
 *
 * <p>Start at {@link wetside.map.MachineMap}.
 */
package wetside.map;
