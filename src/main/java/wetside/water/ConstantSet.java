package wetside.water;

import java.util.EnumMap;
import java.util.Map;

/**
 * Equilibrium constants and activity coefficients that were fitted together. The solubility of calcite and the stability
 * of its ion pairs come from the same measurements, so a constant must never be taken from one set and its neighbour
 * from the other.
 *
 * <p>Source: Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46:1011, and the WATEQ4F set, for
 * {@link #STANDARD}; the set distributed by the US Geological Survey in December 2025 for {@link #HIGH_TEMPERATURE}.
 * Both in {@code checks/water.md}, sections 1 and 2. Checked: WaterChemistryPublishedTest.
 */
public enum ConstantSet {
    /** The one standards are written for; calcite was measured up to 90 °C, above it is extended. */
    STANDARD("Plummer and Busenberg 1982", 363.15),
    /** Fitted to measurements up to 300 °C. */
    HIGH_TEMPERATURE("USGS December 2025", 573.15);

    private final String source;
    private final double measuredTo;
    private final Map<Species, double[]> sizes = new EnumMap<>(Species.class);
    private final Map<Species, Law> pairs = new EnumMap<>(Species.class);
    private final Map<Mineral, Law> minerals = new EnumMap<>(Mineral.class);
    private final Law henry;
    private final Law water;

    ConstantSet(String source, double measuredTo) {
        this.source = source;
        this.measuredTo = measuredTo;
        common();
        if (name().equals("STANDARD")) {
            standard();
            henry = Law.of(108.3865, 0.01985076, -6919.53, -40.45154, 669365);
            water = Law.of(-283.971, -0.05069842, 13323, 102.24447, -1119669);
        } else {
            highTemperature();
            henry = new Law(10.5624, -0.023547, -3972.8, 0, 587460, 1.9194e-5);
            water = new Law(293.29227, 0.1360833, -10576.913, -123.73158, 0, -6.996455e-5);
        }
    }

    private void common() {
        size(Species.H, 9, 0);
        size(Species.CA, 5, 0.165);
        size(Species.MG, 5.5, 0.20);
        size(Species.NA, 4, 0.075);
        size(Species.K, 3.5, 0.015);
        size(Species.CL, 3.5, 0.015);
        size(Species.SO4, 5, -0.04);
        size(Species.NO3, 3, 0);
        size(Species.CO3, 5.4, 0);
        size(Species.HCO3, 5.4, 0);
        size(Species.OH, 3.5, 0);
        size(Species.CAHCO3, 6, 0);
        size(Species.CAOH, 6, 0);
        size(Species.MGOH, 6.5, 0);
        size(Species.MGHCO3, 4, 0);
        size(Species.NACO3, 5.4, 0);
        size(Species.NASO4, 5.4, 0);
        size(Species.KSO4, 5.4, 0);
        size(Species.HSO4, 4.5, 0);
        size(Species.H3SIO4, 4, 0);
        for (Species s : Species.ALL) {
            if (s.charge() == 0) {
                size(s, 0, 0.1);
            }
        }
        pairs.put(Species.CACO3, Law.of(-1228.732, -0.299444, 35512.75, 485.818, 0));
        pairs.put(Species.MGCO3, Law.of(0.991, 0.00667, 0, 0, 0));
        pairs.put(Species.HSO4, Law.of(-56.889, 0.006473, 2307.9, 19.8858, 0));
        pairs.put(Species.CAOH, Law.constant(-12.78));
        pairs.put(Species.MGOH, Law.vantHoff(-11.44, 15.952));
        pairs.put(Species.H3SIO4, Law.of(-302.3724, -0.050698, 15669.69, 108.18466, -1119669));
        minerals.put(Mineral.ARAGONITE, Law.of(-171.9773, -0.077993, 2903.293, 71.595, 0));
        minerals.put(Mineral.AMORPHOUS_SILICA, Law.of(-0.26, 0, -731, 0, 0));
    }

    private void standard() {
        pairs.put(Species.CAHCO3, Law.of(1209.120, 0.31294, -34765.05, -478.782, 0));
        pairs.put(Species.MGHCO3, Law.of(-59.215, 0, 2537.455, 20.92298, 0));
        pairs.put(Species.CASO4, Law.vantHoff(2.30, 1.65));
        pairs.put(Species.MGSO4, Law.vantHoff(2.37, 4.55));
        pairs.put(Species.NAHCO3, Law.constant(-0.25));
        pairs.put(Species.NACO3, Law.vantHoff(1.27, 8.91));
        pairs.put(Species.NASO4, Law.vantHoff(0.70, 1.12));
        pairs.put(Species.KSO4, Law.of(3.106, 0, -673.6, 0, 0));
        minerals.put(Mineral.CALCITE, Law.of(-171.9065, -0.077993, 2839.319, 71.595, 0));
        minerals.put(Mineral.GYPSUM, Law.of(68.2401, 0, -3221.51, -25.0627, 0));
        minerals.put(Mineral.ANHYDRITE, Law.of(197.52, 0, -8669.8, -69.835, 0));
    }

    private void highTemperature() {
        size(Species.HCO3, 5.4, 0.0078);
        size(Species.NA, 4.08, 0.082);
        size(Species.CL, 3.63, 0.017);
        size(Species.NASO4, 3.5, 0.1072);
        size(Species.KSO4, 5.4, 0.19);
        size(Species.CO2, 0, 0.066);
        size(Species.CASO4, 0, 0.0445);
        size(Species.MGSO4, 0, 0.20);
        size(Species.NAHCO3, 0, 0.151);
        // published for Ca + CO3 + H and Mg + CO3 + H; from bicarbonate it is one reaction further
        pairs.put(Species.CAHCO3, Law.of(56.273, -0.041779, -11194, 0, 0).and(Law.SECOND));
        pairs.put(
                Species.MGHCO3,
                Law.of(48.6721, 0.03252849, -2614.335, -18.00263, 563713.9).and(Law.SECOND));
        pairs.put(Species.CASO4, Law.of(1.478, 8.29e-3, -538.2, 0, 0));
        pairs.put(Species.MGSO4, Law.of(0, 9.64e-3, -136, 0, 0));
        pairs.put(Species.NAHCO3, Law.of(-3.589, 7.94e-3, 273, 0, 0));
        pairs.put(Species.NASO4, Law.of(-0.304, 4.51e-3, -28.9, 0, 0));
        pairs.put(Species.KSO4, Law.of(-3.0246, 9.986e-3, 0, 0, 1.093e5));
        minerals.put(Mineral.CALCITE, Law.of(-67.87, -0.051813, 0, 30.25746, 0));
        minerals.put(Mineral.GYPSUM, Law.of(72.244, -0.01474, -4040, -23.7823, 0));
        minerals.put(Mineral.ANHYDRITE, Law.of(5.725, -0.02478, -790.4, 0, 0));
    }

    private void size(Species s, double angstrom, double b) {
        sizes.put(s, new double[] {angstrom, b});
    }

    /** Whose constants. */
    public String source() {
        return source;
    }

    /** Up to where calcite was measured [K]; what is said above is an extension, good to ±0.2 in its index. */
    public double measuredTo() {
        return measuredTo;
    }

    /** All constants at a temperature [K], 273 to 423. */
    public Constants at(double kelvin) {
        if (!(kelvin >= 273 && kelvin <= 423.2)) {
            throw new IllegalArgumentException("water chemistry reaches from 0 to 150 °C, not to " + kelvin + " K");
        }
        return new Constants(this, kelvin);
    }

    double size(Species s) {
        return sizes.get(s)[0];
    }

    double linear(Species s) {
        return sizes.get(s)[1];
    }

    /** 0 for a pair this set does not know. */
    double pair(Species s, double kelvin) {
        Law law = pairs.get(s);
        return law == null ? 0 : law.at(kelvin);
    }

    double product(Mineral m, double kelvin) {
        return minerals.get(m).at(kelvin);
    }

    /** Solubility of carbon dioxide [mol/(kg atm)]. */
    double henry(double kelvin) {
        return henry.at(kelvin);
    }

    double water(double kelvin) {
        return water.at(kelvin);
    }
}
