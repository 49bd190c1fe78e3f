package wetside.water;

/**
 * What is dissolved in a kilogram of water, as totals that heating in a closed vessel does not change. Immutable.
 *
 * @param calcium    [mol/kg], as all others but
 * @param alkalinity [eq/kg], which acids would use up: bicarbonate, twice carbonate, hydroxide, less acid
 * @param carbon     carbonic acid, bicarbonate and carbonate together
 */
public record Composition(
        double calcium,
        double magnesium,
        double sodium,
        double potassium,
        double chloride,
        double sulfate,
        double nitrate,
        double silica,
        double alkalinity,
        double carbon) {
    /** Nothing but water. */
    public static final Composition PURE = new Composition(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** Everything times a factor: what stays behind when steam leaves and takes nothing along. */
    public Composition times(double factor) {
        return new Composition(
                calcium * factor,
                magnesium * factor,
                sodium * factor,
                potassium * factor,
                chloride * factor,
                sulfate * factor,
                nitrate * factor,
                silica * factor,
                alkalinity * factor,
                carbon * factor);
    }

    /** Both in one kilogram. */
    public Composition plus(Composition more) {
        return new Composition(
                calcium + more.calcium,
                magnesium + more.magnesium,
                sodium + more.sodium,
                potassium + more.potassium,
                chloride + more.chloride,
                sulfate + more.sulfate,
                nitrate + more.nitrate,
                silica + more.silica,
                alkalinity + more.alkalinity,
                carbon + more.carbon);
    }

    /**
     * A share of this water with the rest of another. Alkalinity and carbon mix by mass; pH does not.
     *
     * @param share of this water, 0 to 1
     */
    public Composition mixedWith(Composition other, double share) {
        return times(share).plus(other.times(1 - share));
    }

    public Composition withCarbon(double changed) {
        return new Composition(
                calcium, magnesium, sodium, potassium, chloride, sulfate, nitrate, silica, alkalinity, changed);
    }

    /** Without an amount of calcium carbonate; a negative amount dissolves [mol/kg]. */
    public Composition withoutCalcite(double amount) {
        return new Composition(
                calcium - amount,
                magnesium,
                sodium,
                potassium,
                chloride,
                sulfate,
                nitrate,
                silica,
                alkalinity - 2 * amount,
                carbon - amount);
    }

    /** Without an amount of calcium sulfate; a negative amount dissolves [mol/kg]. */
    public Composition withoutCalciumSulfate(double amount) {
        return new Composition(
                calcium - amount,
                magnesium,
                sodium,
                potassium,
                chloride,
                sulfate - amount,
                nitrate,
                silica,
                alkalinity,
                carbon);
    }

    /** Calcium and magnesium [mol/kg]. */
    public double hardness() {
        return calcium + magnesium;
    }

    /** Positive charge [eq/kg]. */
    public double cations() {
        return 2 * calcium + 2 * magnesium + sodium + potassium;
    }

    /** Negative charge, alkalinity as what it neutralises [eq/kg]. */
    public double anions() {
        return chloride + 2 * sulfate + nitrate + alkalinity;
    }

    /** By how much positive charge outweighs negative, as a share of both; 0 in a true water. */
    public double chargeError() {
        double both = cations() + anions();
        return both == 0 ? 0 : (cations() - anions()) / both;
    }
}
