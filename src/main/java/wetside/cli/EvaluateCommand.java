package wetside.cli;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.diagnosis.Library;
import wetside.diagnosis.Who;
import wetside.judging.Evaluation;
import wetside.judging.Policy;
import wetside.judging.Verdict;
import wetside.judging.World;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.procedure.Procedures;
import wetside.run.Draws;

/** How good the diagnosis is on jobs with hidden causes. */
@Command(
        name = "evaluate",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = {
            "Judge the diagnosis: jobs with hidden causes, worked through until fixed.",
            "Ctrl-C ends it and shows what there is by then."
        })
final class EvaluateCommand implements Callable<Integer> {
    private static final int MOST_CASES = 100_000;
    private static final String ALL = "all";

    private final Console console;

    @Parameters(
            arity = "1..*",
            paramLabel = "MACHINE",
            description = "machine files, or names of machines that come with Wetside; all for each of these")
    private List<String> names;

    @Mixin
    private MachineChoice choice;

    @Option(names = "--cases", paramLabel = "N", description = "jobs (default: 100)")
    private int cases = 100;

    @Option(names = "--seed", paramLabel = "N", description = "other jobs for another number (default: 1)")
    private long seed = 1;

    @Mixin
    private DrawsChoice draws;

    @Option(names = "--pairs", paramLabel = "SHARE", description = "share of the faulty machines with two causes (0)")
    private double pairs;

    @Option(
            names = "--healthy",
            paramLabel = "SHARE",
            description = "share of machines with nothing wrong (as believed: 0.3)")
    private Double healthy;

    @Option(names = "--policies", paramLabel = "NAMES", description = "with commas between; all if not said")
    private String policies;

    @Option(names = "--minutes", paramLabel = "N", description = "begin no more jobs after so long")
    private double minutes = Double.POSITIVE_INFINITY;

    @Option(names = "--who", paramLabel = "WHO", description = "owner, technician (if not said) or qualified")
    private String who;

    @Option(names = "--courses", description = "tell the jobs gone wrong step by step")
    private boolean courses;

    @Option(names = "--json", description = "for programs, every job included")
    private boolean json;

    @Option(names = "--svg", paramLabel = "FILE", description = "draw how honest the shares are")
    private String svg;

    EvaluateCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        check();
        List<Policy> play = policies();
        Who at = People.of(who, Who.TECHNICIAN);
        List<Installed> machines = machines().stream().map(choice::installed).toList();
        OutputFile drawn = svg == null ? null : OutputFile.of("--svg", svg);
        VerdictOutlet outlet = new VerdictOutlet(console, machines.size() > 1, json, courses, drawn);
        Thread hook = new Thread(outlet::interrupted);
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            for (Installed installed : machines) {
                judge(installed, play, at, outlet);
            }
            outlet.end();
        } finally {
            forget(hook);
        }
        return outlet.isFailed() ? Wetside.FINDINGS : 0;
    }

    private void judge(Installed installed, List<Policy> play, Who at, VerdictOutlet outlet) {
        Casework casework = installed.casework(Procedures.bundled());
        outlet.begin(() -> judged(installed, casework, Verdict.none(play, seed)), null);
        Library library = draws.bar(console, casework).signing().all(early -> {});
        Evaluation evaluation = new Evaluation(casework, library, Procedures.bundled(), at, world(), play, seed);
        outlet.begin(() -> judged(installed, casework, evaluation.sofar()), evaluation);
        outlet.done(judged(installed, casework, played(evaluation)));
    }

    private World world() {
        World world = World.USUAL.pairs(pairs);
        return healthy == null ? world : world.healthy(healthy);
    }

    private Judged judged(Installed installed, Casework casework, Verdict verdict) {
        return new Judged(installed, casework, verdict, cases, draws.number(), seed);
    }

    private List<String> machines() {
        return names.equals(List.of(ALL)) ? MachineFile.names() : names;
    }

    private Verdict played(Evaluation evaluation) {
        Progress progress = new Progress(console, "Playing jobs", evaluation::done, cases);
        progress.start();
        long end = System.nanoTime() + (long) Math.min(Long.MAX_VALUE / 4.0, minutes * 60e9);
        try {
            return evaluation.play(cases, () -> System.nanoTime() > end);
        } finally {
            progress.stop();
        }
    }

    private void check() {
        if (cases < 1 || cases > MOST_CASES) {
            throw new BadArgument("--cases is from 1 to " + MOST_CASES + ", not " + cases);
        }
        if (!draws.isWhole()) {
            throw new BadArgument("--draws is a multiple of " + Draws.BLOCK + ", not " + draws.number());
        }
        if (!(pairs >= 0 && pairs <= 1)) {
            throw new BadArgument("--pairs is a share from 0 to 1, not " + pairs);
        }
        if (healthy != null && !(healthy >= 0 && healthy <= 1)) {
            throw new BadArgument("--healthy is a share from 0 to 1, not " + healthy);
        }
        if (svg != null && machines().size() > 1) {
            throw new BadArgument("--svg draws one machine, not " + machines().size());
        }
        if (!(minutes > 0)) {
            throw new BadArgument("--minutes is above 0, not " + minutes);
        }
    }

    /** Ours always plays: the others are held against it. */
    private List<Policy> policies() {
        if (policies == null) {
            return List.of(Policy.values());
        }
        List<String> said =
                Arrays.stream(policies.split(",")).map(String::strip).toList();
        for (String word : said) {
            if (!Policy.words().contains(word)) {
                throw new BadArgument("--policies: no policy '" + word + "'; " + Wording.thereAre(Policy.words()));
            }
        }
        return Arrays.stream(Policy.values())
                .filter(p -> p == Policy.PLAN || said.contains(p.word()))
                .toList();
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending already, which is what the hook was for
        }
    }
}
