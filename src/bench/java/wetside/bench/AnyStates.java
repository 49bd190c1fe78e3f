package wetside.bench;

import wetside.plant.AnyState;

/** Random machines in random states: how many the flow solver fails on. Arguments: how many, and a seed. */
public final class AnyStates {
    private AnyStates() {}

    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        AnyState found = new AnyState(count, seed);
        System.out.printf(
                "%d states, %d failed, %d needed the slow way; iterations: mean %.1f, median %d, 99 %% %d, most %d%n",
                found.solves,
                found.failures,
                found.fallbacks,
                found.meanIterations,
                found.iterations(0.5),
                found.iterations(0.99),
                found.iterations(1));
    }
}
