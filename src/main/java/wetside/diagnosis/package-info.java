/**
 * From signatures and readings to ranked causes, the reasons, and the next step.
 *
 * <p>In: a {@link wetside.diagnosis.Library} (causes, questions, and for every cause some draws of what each question
 * would read) and {@link wetside.diagnosis.Observations}. Out: a {@link wetside.diagnosis.Posterior}, the
 * {@link wetside.diagnosis.Evidence} behind it, and, from {@code wetside.diagnosis.plan}, an {@code Advice}.
 *
 * <p>Not here: machines, the twin that computes the draws, files, words for the screen. Nothing in this package knows
 * what an espresso machine is.
 *
 * <p>Start at {@link wetside.diagnosis.Library}, then {@link wetside.diagnosis.Posterior}. Money is in the user's
 * currency, time in minutes, weights of evidence in natural logarithms unless a name says decibans.
 */
package wetside.diagnosis;
