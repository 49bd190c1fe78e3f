package wetside.cli;

import picocli.CommandLine.Option;
import wetside.casework.Casework;
import wetside.run.Draws;

/** How many machines are drawn for each cause, and whether each of them is simulated. */
final class DrawsChoice {
    @Option(names = "--draws", paramLabel = "N", description = "machines drawn for each cause (default: 128)")
    private int draws = 128;

    @Option(
            names = "--all-simulated",
            description = "simulate every one of them, where usually most are told from some (several times as long)")
    private boolean allSimulated;

    int number() {
        return draws;
    }

    boolean isWhole() {
        return draws >= Draws.BLOCK && draws % Draws.BLOCK == 0;
    }

    SigningBar bar(Console console, Casework casework) {
        return new SigningBar(console, casework, draws, allSimulated);
    }
}
