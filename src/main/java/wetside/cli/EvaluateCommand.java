package wetside.cli;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
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
            "Ctrl-C ends it early and shows what there is."
        })
final class EvaluateCommand implements Callable<Integer> {
    private static final int MOST_CASES = 100_000;

    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

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

    @Option(names = "--policies", paramLabel = "NAMES", description = "with commas between; all if not said")
    private String policies;

    @Option(names = "--minutes", paramLabel = "N", description = "begin no more jobs after so long")
    private double minutes = Double.POSITIVE_INFINITY;

    @Option(names = "--who", paramLabel = "WHO", description = "owner, technician (if not said) or qualified")
    private String who;

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
        OutputFile drawn = svg == null ? null : OutputFile.of("--svg", svg);
        List<Policy> play = policies();
        Who at = People.of(who, Who.TECHNICIAN);
        Installed installed = choice.installed(name);
        Casework casework = installed.casework(Procedures.bundled());
        Library library = draws.bar(console, casework).signing().all(early -> {});
        Evaluation evaluation =
                new Evaluation(casework, library, Procedures.bundled(), at, World.USUAL.pairs(pairs), play, seed);
        CountDownLatch told = new CountDownLatch(1);
        Thread hook = endEarly(evaluation, told);
        Verdict verdict = played(evaluation);
        if (json) {
            console.result(Json.print(new VerdictJson(verdict, installed, casework, library, seed).whole()));
        } else {
            new VerdictText(console, verdict, library).print(installed, cases, draws.number(), seed);
        }
        if (drawn != null) {
            drawn.write(VerdictText.chart(verdict, installed));
        }
        console.printer().flush();
        told.countDown();
        forget(hook);
        return 0;
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

    private static Thread endEarly(Evaluation evaluation, CountDownLatch told) {
        Thread hook = new Thread(() -> {
            evaluation.stop();
            try {
                told.await(60, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        Runtime.getRuntime().addShutdownHook(hook);
        return hook;
    }

    private static void forget(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending already, which is what the hook was for
        }
    }
}
