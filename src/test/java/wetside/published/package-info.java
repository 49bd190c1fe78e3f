/**
 * Truth from outside: every value expected here was published by somebody else, and its source stands beside it.
 *
 * <p>Each class declares its topic with {@link wetside.published.Published#topic} and asserts through that recorder,
 * which also keeps the class's section of {@code docs/validation.md}. A value is never tuned to make a test pass; a
 * tolerance always carries its reason. Values recalled without the source at hand say "from memory" in the source.
 *
 * <p>Not here: trade practice without a source ({@code wetside.trade}) and our own digits.
 */
package wetside.published;
