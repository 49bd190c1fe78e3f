package wetside.department;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import wetside.diagnosis.learning.ClosedJob;
import wetside.diagnosis.learning.Experience;
import wetside.machine.Node;
import wetside.units.Dimension;

/**
 * Closed jobs on one model as a file, for another bench or the command line: when, what sort of complaint, how much each
 * cause takes. No owners, no serials, no words of anybody.
 *
 * @param machine name of the machine file they are of, without folder and ending
 */
public record JobsFile(String machine, List<ClosedJob> jobs) {
    /** What the first line says before its version. */
    public static final String HEADER = "wetside jobs";

    private static final int VERSION = 1;
    private static final int MONTHS = 12;

    /** The jobs of a practice that count. */
    public static JobsFile of(Practice practice) {
        return new JobsFile(id(practice.file()), practice.experience().jobs());
    }

    /** What a machine file is called, without folder and ending. */
    public static String id(String file) {
        String name = Path.of(file).getFileName().toString();
        return name.endsWith(".yaml") ? name.substring(0, name.length() - ".yaml".length()) : name;
    }

    public Experience experience() {
        return new Experience(jobs, Experience.NONE.strength(), Experience.NONE.keeps());
    }

    public static JobsFile read(Path file) {
        Node root = Node.read(file);
        root.header(HEADER, VERSION);
        root.only(HEADER, "machine", "jobs");
        String machine = root.need("machine").text();
        List<ClosedJob> jobs = new ArrayList<>();
        for (Node job : root.items("jobs")) {
            job.only("closed", "complaint", "causes");
            YearMonth closed = job.need("closed").month().orElse(YearMonth.of(2000, 1));
            int month = MONTHS * closed.getYear() + closed.getMonthValue();
            jobs.add(new ClosedJob(job.text("complaint", ""), month, credit(job)));
        }
        root.check();
        return new JobsFile(machine, jobs);
    }

    private static Map<String, Double> credit(Node job) {
        Map<String, Double> credit = new HashMap<>();
        double sum = 0;
        for (Map.Entry<String, Node> cause : job.entries("causes").entrySet()) {
            double share = cause.getValue().quantity(Dimension.RATIO);
            if (!(share > 0 && share <= 1)) {
                cause.getValue().problem("a share of a job is above 0 and at most 1");
            }
            credit.put(cause.getKey(), share);
            sum += share;
        }
        if (sum > 1.001) {
            job.problem("the causes take more than the whole job: " + sum);
        }
        return credit;
    }

    /** As {@link #read} takes it. */
    public String write() {
        StringBuilder out = new StringBuilder(HEADER + ": " + VERSION + "\nmachine: " + quoted(machine) + "\njobs:");
        out.append(jobs.isEmpty() ? " []\n" : "\n");
        for (ClosedJob job : jobs) {
            int months = job.month() - 1;
            out.append(String.format(Locale.ROOT, "  - {closed: %04d-%02d", months / MONTHS, months % MONTHS + 1));
            if (!job.complaint().isEmpty()) {
                out.append(", complaint: ").append(quoted(job.complaint()));
            }
            out.append(", causes: {");
            String between = "";
            for (Map.Entry<String, Double> cause : new TreeMap<>(job.credit()).entrySet()) {
                out.append(between).append(quoted(cause.getKey())).append(": ").append(cause.getValue());
                between = ", ";
            }
            out.append("}}\n");
        }
        return out.toString();
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
