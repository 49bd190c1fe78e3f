/**
 * A water in one machine: at the temperatures its twin comes to, before its level probe, boiled down by its use; what falls
 * where in a year, when to descale, what to treat it with.
 *
 * <p>Start at {@link wetside.feedwater.Advice}: everything about one water, with or without a machine.
 *
 * <p>Not here: chemistry (room {@code water}), what was measured (room {@code analysis}), printing.
 */
package wetside.feedwater;
