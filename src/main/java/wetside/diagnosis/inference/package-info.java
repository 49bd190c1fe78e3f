/**
 * From a library and what was observed to shares of belief, and why they are what they are.
 *
 * <p>A reading is judged under a cause by the cause's draws: reports (named options) weight the draws, numbers are
 * compared with a small mixture of normal distributions that has the draws' moments, covariance between readings
 * included ({@code Fit}, {@code Hump}). Start at {@link wetside.diagnosis.inference.Inference}.
 *
 * <p>Not here: what to do next ({@code wetside.diagnosis.plan}), small exact problems ({@code wetside.diagnosis.exact}).
 */
package wetside.diagnosis.inference;
