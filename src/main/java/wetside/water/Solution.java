package wetside.water;

/** A water with all its forms at one temperature. */
public final class Solution {
    private final Composition composition;
    private final double temperature;
    private final double ph;
    private final double ionicStrength;
    private final double[] amounts;
    private final double[] coefficients;
    private final double[] indices;
    private final double carbonDioxide;

    Solution(
            Composition composition,
            double temperature,
            double ph,
            double ionicStrength,
            double[] amounts,
            double[] coefficients,
            double[] indices,
            double carbonDioxide) {
        this.composition = composition;
        this.temperature = temperature;
        this.ph = ph;
        this.ionicStrength = ionicStrength;
        this.amounts = amounts;
        this.coefficients = coefficients;
        this.indices = indices;
        this.carbonDioxide = carbonDioxide;
    }

    public Composition composition() {
        return composition;
    }

    /** [K] */
    public double temperature() {
        return temperature;
    }

    /** At this temperature; neutral is half of −log of the ion product of water, 5.98 at 121 °C. */
    public double ph() {
        return ph;
    }

    /** [mol/kg] */
    public double ionicStrength() {
        return ionicStrength;
    }

    /** [mol/kg] */
    public double amount(Species s) {
        return amounts[s.ordinal()];
    }

    public double activityCoefficient(Species s) {
        return coefficients[s.ordinal()];
    }

    /** Saturation index: 0 where the mineral is just held, above 0 it can fall out; NaN where an ion of it is absent. */
    public double index(Mineral m) {
        return indices[m.ordinal()];
    }

    /** What carbon dioxide over it would be in balance [atm]. */
    public double carbonDioxidePressure() {
        return carbonDioxide;
    }
}
