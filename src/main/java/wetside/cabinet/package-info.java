/**
 * Where parts sit in the case: what each panel hides, what stands in front of what, how a part is reached, and the case
 * drawn from five sides.
 *
 * <p>Everything comes from boxes ({@link wetside.machine.Body}) and from the panels a part is behind; nothing here knows
 * what parts do. Start at {@link wetside.cabinet.Cabinet}; {@link wetside.cabinet.View} says what is seen from a side,
 * {@link wetside.cabinet.Reach} how to get at a part, {@link wetside.cabinet.CabinetDrawing} draws.
 */
package wetside.cabinet;
