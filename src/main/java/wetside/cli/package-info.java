/**
 * The command line: reads arguments, calls what lies below, prints text or JSON, and chooses the exit code.
 *
 * <p>The only package that prints and the only one that knows picocli. Nothing is computed here. Text is at most 100
 * columns wide and uses no colour; what matters most stands last, where the eye stays. Start at {@link
 * wetside.cli.Wetside}; one {@code …Command} for each command. {@code diagnose} is {@code CaseDiagnosis} for a file and
 * {@code Dialogue} for a talk, and both print through {@code KnownText}, {@code CausesText}, {@code RemedyText} and {@code
 * StepText}. {@code run} records a {@code Recording} and hands it to {@code RunOutput}.
 */
package wetside.cli;
