/**
 * A machine made runnable: its blueprint compiled to flat arrays, and the laws that move it on in time: hydraulics and
 * vessels, heat, current, controls. It knows no kind, no fault and no procedure.
 *
 * <p>One step is: heat (linearly implicit) → water and steam (implicit Newton at the heated temperatures) → all fluxes
 * applied to both sides → what each vessel then is → current → controls → accept or redo. Start at {@link
 * wetside.plant.Plant}.
 */
package wetside.plant;
