package wetside.plant;

/** Water lines that no flow can be found for, such as two boilers that are one fitting; says which. */
public final class ImpossibleNetwork extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    ImpossibleNetwork(String what) {
        super(what);
    }
}
