/**
 * What is known of a water, from two drop tests and a pen to a laboratory's sheet: read, held against itself, what was not
 * measured completed and carried as ranges.
 *
 * <p>Start at {@link wetside.analysis.WaterSheet} (the file) and {@link wetside.analysis.Waters} (the waters it may mean).
 * The file is read here and not in {@code water}, because chemistry holds without files, and not in the room of machines,
 * because a water has no machine: a case reads it as well as the command line.
 *
 * <p>Not here: what the water does in a machine.
 */
package wetside.analysis;
