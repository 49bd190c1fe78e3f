package wetside.cli;

/** The command line. */
public final class Wetside {
    private Wetside() {}

    public static void main(String[] args) {
        System.out.println("wetside");
    }
}
