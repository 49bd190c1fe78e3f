package wetside.setting;

/** A system property that holds for a while: for as long as it is open. */
public final class Setting implements AutoCloseable {
    private final String name;
    private final String before;

    public Setting(String name, String value) {
        this.name = name;
        before = System.setProperty(name, value);
    }

    @Override
    public void close() {
        if (before == null) {
            System.clearProperty(name);
        } else {
            System.setProperty(name, before);
        }
    }
}
