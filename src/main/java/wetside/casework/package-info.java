/**
 * From a machine and what was found on it to causes and next steps: the causes a machine can have, what each would read
 * (computed by the twin, draw by draw, kept on disk), a case as a file, and a session of questions and answers.
 *
 * <p>Not here: inference (in {@code wetside.diagnosis}) and physics. Start at {@link wetside.casework.Casework}.
 */
package wetside.casework;
