/**
 * Quantities at the edges: text such as {@code "9 bar"} becomes an SI number on the way in, and an SI number becomes
 * {@code "9.0 bar"} or {@code "131 psi"} on the way out. Everything between works on plain SI doubles.
 *
 * <p>Not here: what a quantity means. Pressures in files and on screen are gauge, inside the plant absolute; this
 * package only scales and never adds the atmosphere. Temperatures are kelvin inside.
 *
 * <p>Start with {@link wetside.units.Quantity#parse} and {@link wetside.units.Display#print}; the units a dimension is
 * written in stand in {@link wetside.units.Dimension}.
 */
package wetside.units;
