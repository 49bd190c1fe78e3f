/**
 * The command line: reads arguments, calls what lies below, prints text or JSON, and chooses the exit code.
 *
 * <p>The only package that prints and the only one that knows picocli. Nothing is computed here. Start at {@code
 * Wetside}.
 */
package wetside.cli;
