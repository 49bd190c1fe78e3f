/**
 * Small problems of diagnosis solved exactly, by looking at every case: what the approximations of the neighbouring
 * packages are measured against, and what is published in textbooks is compared with.
 *
 * <p>Troubleshooting by expected cost ({@code Troubleshooting}), isolation by the fewest tests ({@code TestSequence}),
 * diagnoses from conflicts ({@code Conflicts}, {@code HittingSets}, {@code Probes}), belief networks ({@code BeliefNet}).
 * Nothing here scales; nothing here is used while somebody waits.
 */
package wetside.diagnosis.exact;
