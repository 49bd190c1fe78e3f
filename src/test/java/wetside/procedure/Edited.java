package wetside.procedure;

import wetside.machine.Node;

/** The procedures that ship, their files edited before they are read. */
public final class Edited {
    private Edited() {}

    /** With one text put in the place of another wherever it stands; it has to stand somewhere. */
    public static Procedures procedures(String old, String fresh) {
        Procedures all = new Procedures();
        boolean found = false;
        for (String name : ProcedureFiles.names()) {
            String text = ProcedureFiles.text(name);
            found |= text.contains(old);
            all.add(Node.read(name, text.replace(old, fresh)));
        }
        if (!found) {
            throw new IllegalArgumentException("no procedure says '" + old + "'");
        }
        return all;
    }
}
