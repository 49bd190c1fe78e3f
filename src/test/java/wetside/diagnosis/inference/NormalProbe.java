package wetside.diagnosis.inference;

/** Opens the package's normal distribution to tests of other packages. */
public final class NormalProbe {
    private NormalProbe() {}

    public static double below(double z) {
        return Normal.below(z);
    }
}
