package wetside.run;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Parameter;
import wetside.machine.Spread;

/**
 * Machines as they come off the line and stand in kitchens: every parameter with a tolerance drawn by Latin hypercube
 * sampling, the same draw for every cause, so that causes are compared on equal machines. Block by block: the first 8 draws
 * are a Latin hypercube by themselves, so a first answer needs no more.
 */
public final class Draws {
    /** Draws in one block. */
    public static final int BLOCK = 8;

    private final Machine machine;
    private final long seed;
    private final double wider;

    public Draws(Machine machine, long seed) {
        this(machine, seed, 1);
    }

    private Draws(Machine machine, long seed, double wider) {
        this.machine = machine;
        this.seed = seed;
        this.wider = wider;
    }

    /** The same machines, every part so many times as far from what it should be; severities stay. */
    public Draws wider(double factor) {
        return new Draws(machine, seed, wider * factor);
    }

    /** Machine number {@code k}; the same for ever for a machine and seed. */
    public Machine machine(int k) {
        List<Component> drawn = new ArrayList<>();
        for (Component c : machine.components()) {
            drawn.add(draw(c, k));
        }
        return machine.withAll(drawn);
    }

    /** Severity of draw {@code k} for a cause, 0..1, spread evenly over every block. */
    public double severity(String cause, int k) {
        return stratified(mix(seed, cause.hashCode()), k);
    }

    private Component draw(Component c, int k) {
        double[] values = c.values();
        for (int i = 0; i < values.length; i++) {
            Spread spread = c.spread(i);
            if (spread.kind() != Spread.Law.EXACT) {
                Parameter p = c.kind().parameters().get(i);
                long stream = mix(seed, 31L * c.id().hashCode() + p.name().hashCode());
                double v = spread.wider(wider).at(values[i], Normal.quantile(stratified(stream, k)));
                values[i] = Math.max(p.min(), Math.min(p.max(), v));
            }
        }
        return c.withValues(values);
    }

    /** A number in 0..1 whose blocks of eight each hit every eighth once. */
    private static double stratified(long stream, int k) {
        int block = k / BLOCK;
        SplittableRandom random = new SplittableRandom(mix(stream, block));
        int[] cells = new int[BLOCK];
        for (int i = 0; i < BLOCK; i++) {
            int j = random.nextInt(i + 1);
            cells[i] = cells[j];
            cells[j] = i;
        }
        double within = 0;
        for (int i = 0; i <= k % BLOCK; i++) {
            within = random.nextDouble();
        }
        return (cells[k % BLOCK] + within) / BLOCK;
    }

    private static long mix(long a, long b) {
        long z = a * 0x9E3779B97F4A7C15L + b;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
