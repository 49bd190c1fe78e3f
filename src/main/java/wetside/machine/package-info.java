/**
 * What a machine is: components of declared kinds, the lines, wires, contacts and linkages that join them, panels,
 * revisions, and the installation it stands in. Reading and checking of machine files lives here too.
 *
 * <p>Not here: physics (a kind's, see {@code wetside.kind}) and anything that moves in time. Start at {@link
 * wetside.machine.Machine}; a file becomes one through {@code MachineFile}.
 */
package wetside.machine;
