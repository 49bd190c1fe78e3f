/**
 * Time: what an operator does (scenarios), what is seen while it happens (traces), and how parts of one machine differ from
 * the next (draws).
 *
 * <p>No solver lives here and no procedure; start at {@link wetside.run.Run}.
 */
package wetside.run;
