/**
 * The workbench in the browser: one server on the loopback address, pages from templates in {@code src/main/jte/bench}.
 *
 * <p>Start at {@link wetside.bench.Bench}, which starts and stops it; {@link wetside.bench.Guard} is what every request
 * passes. Each {@code *Pages} class has the routes of one page of the menu and builds the record its template shows.
 *
 * <p>Not here: what is computed (casework, run, map, cabinet, tour, card) and what is kept (shop).
 */
package wetside.bench;
