/**
 * What to do next: the step after which the machine is expected to be mended at the least cost, and what else could be
 * done instead.
 *
 * <p>A question costs its time and saves by making the repairs that follow better aimed; a repair is itself a way to
 * find out. Every step is planned anew from what is then known. Start at {@link wetside.diagnosis.plan.NextStep}.
 */
package wetside.diagnosis.plan;
