/**
 * The laws of water, steam, flow, heat, current and control as pure static functions of SI numbers.
 *
 * <p>Start with {@link wetside.physics.Saturation} (what the plant calls in its inner loop), {@link
 * wetside.physics.Water}, {@link wetside.physics.Liquid} and {@link wetside.physics.Steam} (the full formulation it is
 * fitted to), {@link wetside.physics.Terms} (passages as the plant keeps them), {@link wetside.physics.Friction} and {@link wetside.physics.Orifice}. Each law says in which range it
 * holds, where it comes from and which published test checks it; where a solver needs a slope, one function gives value
 * and slope.
 *
 * <p>Pressures here are absolute unless a name says difference, temperatures kelvin, flows kg/s.
 *
 * <p>{@link wetside.physics.ResistiveNetwork} is the one solver here: Ohm and Kirchhoff for any number of resistances.
 *
 * <p>Not here: machines and their parts, networks of them and their solution, anything that remembers.
 */
package wetside.physics;
