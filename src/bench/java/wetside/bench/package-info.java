/**
 * Benchmarks: one class for each thing that has to be quick, run by {@code ./bench}; figures go to {@code
 * docs/performance.md}. {@code SideBySide} times our half of the comparisons in {@code src/bench/compare}.
 */
package wetside.bench;
