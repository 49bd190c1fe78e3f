/**
 * How to find something out on any machine: routines (what is done, in roles) and procedures (what is read while it is done,
 * how it is answered, who may do it, what it takes). All of it is data in {@code procedures/}; a machine gets every procedure
 * whose roles it fills.
 *
 * <p>Not here: what an answer means (see {@code wetside.diagnosis}). Start at {@link wetside.procedure.Procedures}.
 */
package wetside.procedure;
