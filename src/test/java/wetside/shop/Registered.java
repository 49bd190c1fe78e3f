package wetside.shop;

/** Machines for tests to which it does not matter where they stand. */
public final class Registered {
    private Registered() {}

    /** Puts one on the register of which nothing more is known, and its owner. */
    public static long machine(
            Shop shop, String serial, String file, String revision, String supply, String owner, String fedFrom) {
        Register register = new Register(shop);
        return register.machine(new RegisteredMachine(
                0,
                serial,
                file,
                revision,
                supply,
                register.owner(owner, "", "", ""),
                fedFrom,
                null,
                null,
                null,
                null,
                null,
                "",
                "",
                0));
    }
}
