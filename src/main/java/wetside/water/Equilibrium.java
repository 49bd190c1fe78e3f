package wetside.water;

/**
 * All dissolved forms of a water at one temperature: mass balances of every total, ion pairs, activity coefficients after
 * Truesdell and Jones. Keeps its last answer as a first guess, so it is not for two threads.
 *
 * <pre>
 * log γ = −A z² √I / (1 + B a √I) + b I ;  neutral: log γ = b I
 * </pre>
 *
 * <p>Source: checks/water.md section 2 (recipe and constants). Checked: WaterChemistryPublishedTest.
 */
public final class Equilibrium {
    private static final double SAME = 1e-11;
    private static final int ROUNDS = 200;

    private final Constants k;
    private final double[] m = new double[Species.ALL.length];
    private final double[] gamma = new double[Species.ALL.length];
    private double ionic = Double.NaN;
    private double gammaOf = Double.NaN;
    private double carbonate;
    private double lastPh = 7.5;

    public Equilibrium(Constants constants) {
        k = constants;
    }

    public static Equilibrium at(ConstantSet set, double kelvin) {
        return new Equilibrium(set.at(kelvin));
    }

    public Constants constants() {
        return k;
    }

    /** What is known of a water's carbon beside its alkalinity. */
    private enum Given {
        CARBON,
        PH,
        GAS
    }

    /** The water in a closed vessel at this temperature: alkalinity and carbon are what they are, pH follows. */
    public Solution of(Composition c) {
        double h = solve(c, Given.CARBON, c.carbon());
        lastPh = -Math.log10(h);
        return solution(c, lastPh);
    }

    /** A sample whose pH was measured at this temperature: its carbon is what alkalinity and pH say. */
    public Composition sampled(Composition c, double ph) {
        solve(c, Given.PH, Math.pow(10, -ph));
        return c.withCarbon(Math.max(0, carbonOf(m)));
    }

    /** The water in touch with a gas of a given partial pressure of carbon dioxide [atm]. */
    public Solution openTo(Composition c, double atmospheres) {
        double h = solve(c, Given.GAS, k.set.henry(k.kelvin) * atmospheres * k.first * k.second);
        return solution(c.withCarbon(carbonOf(m)), -Math.log10(h));
    }

    /**
     * Solves all forms: hydrogen by Newton's method on the balance of alkalinity with pairs and activity coefficients of
     * the round before, then those anew, until nothing moves.
     *
     * @param given carbon [mol/kg], activity of hydrogen, or activity of carbonate times the square of that of hydrogen
     * @return activity of hydrogen
     */
    private double solve(Composition c, Given kind, double given) {
        start(c);
        double h = kind == Given.PH ? given : Math.pow(10, -lastPh);
        for (int round = 0; round < ROUNDS; round++) {
            double hWas = h;
            double was = carbonate;
            coefficients();
            CarbonBalance balance = balance(c);
            h = switch (kind) {
                case PH -> h;
                case CARBON -> balance.closed(h, given, c.alkalinity());
                case GAS -> balance.open(h, given, c.alkalinity());
            };
            carbonate = switch (kind) {
                case PH -> balance.carbonate(h, c.alkalinity());
                case CARBON -> given / balance.carbonPerCarbonate(h);
                case GAS -> given / (h * h);
            };
            place(h, c);
            double now = ionicStrength();
            boolean still = Math.abs(now - ionic) <= SAME * (now + 1e-12)
                    && Math.abs(h - hWas) <= SAME * h
                    && Math.abs(carbonate - was) <= SAME * carbonate;
            ionic = now;
            if (still) {
                break;
            }
        }
        return h;
    }

    /** How carbon and alkalinity hang on hydrogen while activities of all others stand still. */
    private CarbonBalance balance(Composition c) {
        double ca = activity(Species.CA);
        double mg = activity(Species.MG);
        double na = activity(Species.NA);
        double bicarbonates =
                per(Species.HCO3) + ca * unit(Species.CAHCO3) + mg * unit(Species.MGHCO3) + na * unit(Species.NAHCO3);
        double carbonates =
                per(Species.CO3) + ca * unit(Species.CACO3) + mg * unit(Species.MGCO3) + na * unit(Species.NACO3);
        return new CarbonBalance(
                per(Species.CO2) / (k.first * k.second),
                bicarbonates / k.second,
                carbonates,
                k.water * per(Species.OH) + ca * unit(Species.CAOH) + mg * unit(Species.MGOH),
                per(Species.H) + activity(Species.SO4) * unit(Species.HSO4),
                c.silica(),
                unit(Species.H3SIO4) * gamma[Species.H4SIO4.ordinal()]);
    }

    private double per(Species s) {
        return 1 / gamma[s.ordinal()];
    }

    /** How far a mineral is from falling out: 0 at the limit, positive beyond; NaN where one of its ions is absent. */
    double index(Mineral mineral) {
        double a = switch (mineral) {
            case CALCITE, ARAGONITE -> activity(Species.CA) * carbonate;
            case GYPSUM, ANHYDRITE -> activity(Species.CA) * activity(Species.SO4);
            case AMORPHOUS_SILICA -> activity(Species.H4SIO4);
        };
        return a > 0 ? Math.log10(a / k.product(mineral)) : Double.NaN;
    }

    private double activity(Species s) {
        return m[s.ordinal()] * gamma[s.ordinal()];
    }

    private void start(Composition c) {
        if (Double.isNaN(ionic)) {
            ionic = 0.5
                    * (4 * c.calcium()
                            + 4 * c.magnesium()
                            + c.sodium()
                            + c.potassium()
                            + c.chloride()
                            + 4 * c.sulfate()
                            + c.nitrate()
                            + Math.abs(c.alkalinity()));
            set(Species.CA, c.calcium());
            set(Species.MG, c.magnesium());
            set(Species.NA, c.sodium());
            set(Species.K, c.potassium());
            set(Species.SO4, c.sulfate());
            carbonate = 1e-6;
        }
    }

    private void coefficients() {
        if (Math.abs(ionic - gammaOf) <= 1e-11 * ionic) {
            return;
        }
        gammaOf = ionic;
        double root = Math.sqrt(ionic);
        for (int i = 0; i < gamma.length; i++) {
            gamma[i] = Math.exp(-k.pull[i] * root / (1 + k.spread[i] * root) + k.linear[i] * ionic);
        }
    }

    /** Amounts of all forms from the activities of hydrogen and carbonate and the free ions of last time. */
    private void place(double h, Composition c) {
        double bicarbonate = h * carbonate / k.second;
        free(Species.H, h);
        free(Species.OH, k.water / h);
        free(Species.CO3, carbonate);
        free(Species.HCO3, bicarbonate);
        free(Species.CO2, h * bicarbonate / k.first);
        set(Species.CL, c.chloride());
        set(Species.NO3, c.nitrate());
        double sulfate = activity(Species.SO4);
        double ca = c.calcium() / (1 + bound(Species.CA, h, bicarbonate, sulfate));
        double mg = c.magnesium() / (1 + bound(Species.MG, h, bicarbonate, sulfate));
        double na = c.sodium() / (1 + bound(Species.NA, h, bicarbonate, sulfate));
        double po = c.potassium() / (1 + bound(Species.K, h, bicarbonate, sulfate));
        set(Species.CA, ca);
        set(Species.MG, mg);
        set(Species.NA, na);
        set(Species.K, po);
        double takers = unit(Species.CASO4) * activity(Species.CA)
                + unit(Species.MGSO4) * activity(Species.MG)
                + unit(Species.NASO4) * activity(Species.NA)
                + unit(Species.KSO4) * activity(Species.K)
                + unit(Species.HSO4) * h;
        set(Species.SO4, c.sulfate() / (1 + takers * gamma[Species.SO4.ordinal()]));
        pairs(h, bicarbonate);
        double split = unit(Species.H3SIO4) / h * gamma[Species.H4SIO4.ordinal()];
        set(Species.H4SIO4, c.silica() / (1 + split));
        set(Species.H3SIO4, c.silica() - m[Species.H4SIO4.ordinal()]);
    }

    /** What of a metal is in pairs, per what of it is free. */
    private double bound(Species metal, double h, double bicarbonate, double sulfate) {
        double share = switch (metal) {
            case CA ->
                unit(Species.CAHCO3) * bicarbonate
                        + unit(Species.CACO3) * carbonate
                        + unit(Species.CASO4) * sulfate
                        + unit(Species.CAOH) / h;
            case MG ->
                unit(Species.MGHCO3) * bicarbonate
                        + unit(Species.MGCO3) * carbonate
                        + unit(Species.MGSO4) * sulfate
                        + unit(Species.MGOH) / h;
            case NA ->
                unit(Species.NAHCO3) * bicarbonate + unit(Species.NACO3) * carbonate + unit(Species.NASO4) * sulfate;
            case K -> unit(Species.KSO4) * sulfate;
            default -> 0;
        };
        return share * gamma[metal.ordinal()];
    }

    private void pairs(double h, double bicarbonate) {
        double ca = activity(Species.CA);
        double mg = activity(Species.MG);
        double na = activity(Species.NA);
        double sulfate = activity(Species.SO4);
        pair(Species.CAHCO3, ca * bicarbonate);
        pair(Species.CACO3, ca * carbonate);
        pair(Species.CASO4, ca * sulfate);
        pair(Species.CAOH, ca / h);
        pair(Species.MGHCO3, mg * bicarbonate);
        pair(Species.MGCO3, mg * carbonate);
        pair(Species.MGSO4, mg * sulfate);
        pair(Species.MGOH, mg / h);
        pair(Species.NAHCO3, na * bicarbonate);
        pair(Species.NACO3, na * carbonate);
        pair(Species.NASO4, na * sulfate);
        pair(Species.KSO4, activity(Species.K) * sulfate);
        pair(Species.HSO4, h * sulfate);
    }

    private void pair(Species s, double product) {
        m[s.ordinal()] = unit(s) * product;
    }

    /** Amount of a pair where the activities it is made of are 1. */
    private double unit(Species s) {
        return k.pair[s.ordinal()] / gamma[s.ordinal()];
    }

    private void free(Species s, double activity) {
        m[s.ordinal()] = activity / gamma[s.ordinal()];
    }

    private void set(Species s, double amount) {
        m[s.ordinal()] = amount;
    }

    private static final Species[] CARBON = {
        Species.CO2,
        Species.HCO3,
        Species.CO3,
        Species.CAHCO3,
        Species.CACO3,
        Species.MGHCO3,
        Species.MGCO3,
        Species.NAHCO3,
        Species.NACO3
    };

    private static double carbonOf(double[] m) {
        double sum = 0;
        for (Species s : CARBON) {
            sum += m[s.ordinal()];
        }
        return sum;
    }

    private double ionicStrength() {
        double sum = 0;
        for (Species s : Species.ALL) {
            sum += s.charge() * s.charge() * m[s.ordinal()];
        }
        return sum / 2;
    }

    private Solution solution(Composition c, double ph) {
        double[] indices = new double[Mineral.values().length];
        for (Mineral mineral : Mineral.values()) {
            indices[mineral.ordinal()] = index(mineral);
        }
        double pressure = activity(Species.CO2) / k.set.henry(k.kelvin);
        return new Solution(c, k.kelvin, ph, ionic, m.clone(), gamma.clone(), indices, pressure);
    }
}
