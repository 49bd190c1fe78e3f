/**
 * How good the diagnosis is: whole jobs with hidden causes, played by the twin and worked through to the end by our plan
 * and by plainer ones, on equal terms.
 *
 * <p>Not here: anything the diagnosis itself uses. It gets answers only, as from a person. Start at
 * {@link wetside.judging.Evaluation}.
 */
package wetside.judging;
