package wetside.bench;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.plan.NextStep;
import wetside.diagnosis.plan.Situation;

/**
 * Processor time of an update and of update and next step, one thread: the first in the process, then the median of
 * many, after no, three and twelve answers. Other work on the machine hardly counts.
 */
public final class AdviceTime {
    private static final Situation SITUATION = Situation.of(Who.TECHNICIAN);

    private AdviceTime() {}

    public static void main(String[] arguments) {
        int[] size = Arrays.stream(arguments).mapToInt(Integer::parseInt).toArray();
        AdviceCase made = size.length == 3 ? new AdviceCase(size[0], size[1], size[2]) : new AdviceCase(250, 120, 128);
        Inference inference = Inference.of(made.library());
        double first = time(() -> NextStep.advise(inference.posterior(Observations.none()), SITUATION));
        System.out.printf(Locale.ROOT, "first %.0f ms%n", first);
        for (int round = 0; round < 2; round++) {
            for (int count : new int[] {0, 3, 12}) {
                Observations answers = made.answers(count);
                double[] update = times(() -> inference.posterior(answers));
                double[] both = times(() -> NextStep.advise(inference.posterior(answers), SITUATION));
                System.out.printf(
                        Locale.ROOT,
                        "%d answers: update %.1f ms, with next step %.1f ms (%.1f to %.1f)%n",
                        count,
                        update[update.length / 2],
                        both[both.length / 2],
                        both[0],
                        both[both.length - 1]);
            }
        }
    }

    private static double[] times(Runnable work) {
        double[] times = new double[25];
        for (int i = 0; i < times.length; i++) {
            times[i] = time(work);
        }
        Arrays.sort(times);
        return times;
    }

    private static double time(Runnable work) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.run();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) * 1e-6;
    }
}
