/**
 * From signatures and readings to ranked causes, the reasons, and the next step.
 *
 * <p>In: a {@link wetside.diagnosis.Library} (causes, questions, and for every cause some draws of what each question
 * would read) and {@link wetside.diagnosis.Observations}. Out: from {@code wetside.diagnosis.inference} a
 * {@code Posterior} and the {@code Evidence} behind it, and from {@code wetside.diagnosis.plan} an {@code Advice}. Small
 * problems solved exactly, to check the rest against, live in {@code wetside.diagnosis.exact}.
 *
 * <p>Not here: machines, the twin that computes the draws, files, words for the screen. Nothing in this package knows
 * what an espresso machine is.
 *
 * <p>Start at {@link wetside.diagnosis.Library}, then {@code Inference}. Money is in the user's
 * currency, time in minutes, weights of evidence in natural logarithms unless a name says decibans.
 */
package wetside.diagnosis;
