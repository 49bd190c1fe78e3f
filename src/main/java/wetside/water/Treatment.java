package wetside.water;

/**
 * Something done to a water before it reaches the machine: a change of composition that keeps charge and mass. What happens
 * to pH follows from alkalinity and carbon, as everywhere.
 */
@FunctionalInterface
public interface Treatment {
    Composition of(Composition raw);

    /** This, then another. */
    default Treatment then(Treatment next) {
        return raw -> next.of(of(raw));
    }

    /** A share goes round it: how most filters are set. */
    default Treatment bypassedBy(double share) {
        return raw -> raw.mixedWith(of(raw), share);
    }

    /** As it comes. */
    static Treatment none() {
        return raw -> raw;
    }

    /**
     * Sodium for calcium and magnesium. Alkalinity and pH stay, so conductivity rises a little.
     *
     * @param leak share of the hardness that comes through, 0 to 1
     */
    static Treatment softening(double leak) {
        return raw -> {
            double kept = Math.min(1, Math.max(0, leak));
            double freed = 2 * raw.hardness() * (1 - kept);
            return new Composition(
                    raw.calcium() * kept,
                    raw.magnesium() * kept,
                    raw.sodium() + freed,
                    raw.potassium(),
                    raw.chloride(),
                    raw.sulfate(),
                    raw.nitrate(),
                    raw.silica(),
                    raw.alkalinity(),
                    raw.carbon());
        };
    }

    /**
     * Hydrogen for the hardness that alkalinity answers for (weak acid exchanger): hardness and alkalinity fall by the same
     * equivalents, the carbon stays as free carbon dioxide until it is let out.
     *
     * @param done share of what could be exchanged, 0 to 1; a fresh resin comes near 1
     */
    static Treatment hydrogenExchange(double done) {
        return raw -> {
            double most = Math.min(2 * raw.hardness(), Math.max(0, raw.alkalinity()));
            double taken = most * Math.min(1, Math.max(0, done));
            double share = raw.hardness() > 0 ? taken / (2 * raw.hardness()) : 0;
            return new Composition(
                    raw.calcium() * (1 - share),
                    raw.magnesium() * (1 - share),
                    raw.sodium(),
                    raw.potassium(),
                    raw.chloride(),
                    raw.sulfate(),
                    raw.nitrate(),
                    raw.silica(),
                    raw.alkalinity() - taken,
                    raw.carbon());
        };
    }

    /**
     * Reverse osmosis: a membrane holds ions back, ions of two charges better than of one; dissolved carbon dioxide passes.
     * The balance of charge is kept by letting as much bicarbonate pass as the rest needs.
     *
     * @param passes   share of one-charged ions that passes, usually 0.02 to 0.08
     * @param passesTwo share of two-charged ions and silica that passes, usually 0.005 to 0.02
     * @param freeCarbon free carbon dioxide of the raw water, which passes whole [mol/kg]
     */
    static Treatment reverseOsmosis(double passes, double passesTwo, double freeCarbon) {
        return raw -> {
            double calcium = raw.calcium() * passesTwo;
            double magnesium = raw.magnesium() * passesTwo;
            double sodium = raw.sodium() * passes;
            double potassium = raw.potassium() * passes;
            double chloride = raw.chloride() * passes;
            double sulfate = raw.sulfate() * passesTwo;
            double nitrate = raw.nitrate() * passes;
            double owed = raw.cations() - raw.anions();
            double alkalinity =
                    2 * calcium + 2 * magnesium + sodium + potassium - chloride - 2 * sulfate - nitrate - owed * passes;
            return new Composition(
                    calcium,
                    magnesium,
                    sodium,
                    potassium,
                    chloride,
                    sulfate,
                    nitrate,
                    raw.silica() * passesTwo,
                    alkalinity,
                    Math.max(0, alkalinity) + freeCarbon);
        };
    }

    /** Another water added, so that this is a share of the mixture. */
    static Treatment mixing(Composition other, double share) {
        return raw -> raw.mixedWith(other, share);
    }

    /** Salts dissolved [mol per kg of water each]. */
    static Treatment dosing(Composition salts) {
        return raw -> raw.plus(salts);
    }

    /** Boiled in an open kettle and poured off what has fallen: lime and free carbon dioxide leave. */
    static Treatment boilingOff(ConstantSet set) {
        return raw -> {
            Equilibrium hot = Equilibrium.at(set, 373.15);
            Composition now = raw;
            for (int turn = 0; turn < 40; turn++) {
                Composition open = hot.openTo(now, AIR).composition();
                Composition next = Precipitation.withoutExcess(hot, open);
                if (Math.abs(next.calcium() - now.calcium()) < 1e-9) {
                    return next;
                }
                now = next;
            }
            return now;
        };
    }

    /** Carbon dioxide in air [atm]; a log of −3.38, as the reference recipes have it. */
    double AIR = 4.169e-4;

    /** Left standing open until it holds as much carbon dioxide as the air asks for. */
    static Treatment aired(ConstantSet set) {
        return raw -> Equilibrium.at(set, 298.15).openTo(raw, AIR).composition();
    }
}
