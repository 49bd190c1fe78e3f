/**
 * Wetside, the service bench for espresso machines: from one machine file to the cause of a fault.
 *
 * <p>The tour, in the order in which a file becomes an answer:
 *
 * <pre>
 *  machine file ──machine──▶ Machine ──kind──▶ Blueprint ──plant──▶ Plant ──run──▶ readings over time
 *  procedure files ──procedure──▶ what to read, in which state of the machine        │
 *  case: what somebody saw ──casework──▶ every cause, and what each would read ◀──────┘
 *                                            └──diagnosis──▶ causes ranked, why, what to check next
 * </pre>
 *
 * <ul>
 *   <li>{@code units}: "9 bar" and "750 ml" at the edges. Inside there are only SI doubles: Pa, m³/s, kg, K, J, V, A, Ω.
 *   <li>{@code physics}: laws as pure functions of doubles, each with its source and the test that checks it.
 *   <li>{@code water}: chemistry of what runs through it: forms, scale, boiling down, conductivity. It knows no machine.
 *   <li>{@code machine}: what a machine is, that is components, lines, wires, contacts, panels, revisions and
 *       installation, and the one reader of our files with its messages.
 *   <li>{@code blueprint}: nodes, branches, lumps, resistors, switches, instruments: the neutral words in which a
 *       component says what it does.
 *   <li>{@code kind}: one file for each kind of component: its ports and parameters, its physics written into a
 *       blueprint, and its faults as changed parameters.
 *   <li>{@code plant}: a blueprint compiled to flat arrays and solved: water, heat, steam, current, controls.
 *   <li>{@code run}: time. Scenarios, events, draws of tolerances, traces of every instrument.
 *   <li>{@code procedure}: how to look: what to bring the machine into, what to read, who may do it.
 *   <li>{@code diagnosis}: inference alone: from readings of causes and observations to ranked causes, their evidence,
 *       and the cheapest next step. It knows no machine.
 *   <li>{@code casework}: where twin and inference meet: the causes of a machine, what each would read, cases as files.
 *   <li>{@code drawing}: charts as SVG, the symbols of the kinds, one number for each part on all drawings.
 *   <li>{@code map}: the circuits of a machine, laid out from its file and coloured by a run.
 *   <li>{@code page}: printable sheets: one content as HTML that needs no other file, and as PDF. Its templates are in
 *       {@code src/main/jte}; the build turns them into classes ({@code mvn generate-sources}).
 *   <li>{@code tour}: walks through a machine in the order things flow, in the words of the kinds.
 *   <li>{@code cabinet}: where parts sit in the case, what panels hide, how a part is reached.
 *   <li>{@code card}: one part on a card: know it, how it fails, how to test it, what comes off first.
 *   <li>{@code shop}: the workshop's own data, in one file that survives a crash.
 *   <li>{@code bench}: the workbench in the browser: pages over all of this.
 *   <li>{@code cli}: the command line, the only place that prints.
 * </ul>
 *
 * <p>A package uses only those before it, as {@code ArchitectureTest} states rule by rule.
 *
 * <p>Two ideas carry the rest. <b>A fault is a changed parameter, never a case in the code</b>: a fault applied to a
 * machine gives another machine, and the plant never learns the word. Whatever a fault looks like comes out of the
 * parts and how they are joined. <b>The diagnosis believes only the twin</b>: every likelihood is computed from
 * simulated readings, with part tolerances drawn afresh, so a new machine file brings its own fault signatures.
 *
 * <p>Signs: a flow is positive from a branch's first port to its second, heat is positive into what is named, pressures
 * are absolute unless the name says gauge.
 *
 * <p>Where to start: read a file in {@code machines/}, then one small kind beside it, then {@code wetside.cli}.
 */
package wetside;
