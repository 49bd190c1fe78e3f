package wetside.plant;

/**
 * What went in, what came out and what is still there, over a run: water, air, energy, charge. A residual says how much the
 * books are off; it is reported with every run.
 */
public final class Balance {
    private double firstMass;
    private double firstAir;
    private double firstEnergy;
    private double taken;
    private double lost;
    private double water;
    private double airResidual;
    private double energy;
    private double charge;
    private double turnover;
    private double waterTurnover;

    void open(double mass, double air, double energy) {
        firstMass = mass;
        firstAir = air;
        firstEnergy = energy;
    }

    void step(double dt, double electrical, double toSurroundings) {
        taken += electrical * dt;
        lost += toSurroundings * dt;
    }

    void close(double mass, double air, double stored, Carried c, Circuit.Balance current) {
        double[] b = c.books;
        water = mass - firstMass - (b[Carried.MASS_IN] - b[Carried.MASS_OUT]) + b[Carried.LINE_MASS];
        airResidual = air - firstAir - (b[Carried.AIR_IN] - b[Carried.AIR_OUT]) + b[Carried.LINE_AIR];
        energy = stored
                - firstEnergy
                - (b[Carried.ENERGY_IN] - b[Carried.ENERGY_OUT])
                + b[Carried.LINE_ENERGY]
                - (taken - lost);
        charge = current.charge();
        turnover = taken;
        waterTurnover = b[Carried.MASS_IN];
    }

    double taken() {
        return taken;
    }

    double lost() {
        return lost;
    }

    void load(double heatTaken, double heatLost) {
        taken = heatTaken;
        lost = heatLost;
    }

    /** Water and steam unaccounted for [kg]. */
    public double waterResidual() {
        return water;
    }

    /** Air unaccounted for [kg]. */
    public double airResidual() {
        return airResidual;
    }

    /** Energy unaccounted for [J]. */
    public double energyResidual() {
        return energy;
    }

    /** Current unaccounted for at any terminal [A]. */
    public double chargeResidual() {
        return charge;
    }

    /** Electrical heat of the run [J]. */
    public double heatTaken() {
        return turnover;
    }

    /** Water taken in during the run [kg]. */
    public double waterTaken() {
        return waterTurnover;
    }
}
