package wetside.water;

/** Food-grade salts a brewing water can be made from; composition per mol and grams per mol. */
public enum Salt {
    CALCIUM_CHLORIDE("calcium chloride dihydrate", "CaCl2·2H2O", 147.01, of(1, 0, 0, 0, 2, 0, 0, 0)),
    CALCIUM_SULFATE("calcium sulfate dihydrate", "CaSO4·2H2O", 172.16, of(1, 0, 0, 0, 0, 1, 0, 0)),
    MAGNESIUM_SULFATE("magnesium sulfate heptahydrate", "MgSO4·7H2O", 246.47, of(0, 1, 0, 0, 0, 1, 0, 0)),
    MAGNESIUM_CHLORIDE("magnesium chloride hexahydrate", "MgCl2·6H2O", 203.30, of(0, 1, 0, 0, 2, 0, 0, 0)),
    SODIUM_BICARBONATE("sodium bicarbonate", "NaHCO3", 84.01, of(0, 0, 1, 0, 0, 0, 1, 1)),
    POTASSIUM_BICARBONATE("potassium bicarbonate", "KHCO3", 100.11, of(0, 0, 0, 1, 0, 0, 1, 1)),
    SODIUM_CHLORIDE("sodium chloride", "NaCl", 58.44, of(0, 0, 1, 0, 1, 0, 0, 0));

    private final String words;
    private final String formula;
    private final double grams;
    private final Composition perMol;

    Salt(String words, String formula, double grams, Composition perMol) {
        this.words = words;
        this.formula = formula;
        this.grams = grams;
        this.perMol = perMol;
    }

    private static Composition of(
            double ca, double mg, double na, double k, double cl, double so4, double alkalinity, double carbon) {
        return new Composition(ca, mg, na, k, cl, so4, 0, 0, alkalinity, carbon);
    }

    public String words() {
        return words;
    }

    public String formula() {
        return formula;
    }

    /** [g/mol] */
    public double grams() {
        return grams;
    }

    /** What a mol of it brings into a kilogram of water. */
    public Composition dissolved(double mol) {
        return perMol.times(mol);
    }
}
