/**
 * What a shop's closed jobs say of its machines: how often which cause turns up, and how jobs go.
 *
 * <p>Start at {@link wetside.department.Ledger}, which keeps what it has read and reads on where something has happened;
 * {@link wetside.department.Practice} is all of one model, {@link wetside.department.Counted} one job. What counts how much
 * is decided in {@link wetside.department.Counting}.
 *
 * <p>Not here: the mathematics (diagnosis.learning), where jobs are kept (shop), pages.
 */
package wetside.department;
