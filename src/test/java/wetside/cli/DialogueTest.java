package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The dialogue as typed, line by line. */
class DialogueTest {
    private static final String COLD = "pump gauge at rest, cold";

    private static Shell.Done talk(String... lines) {
        return Shell.typed(
                String.join("\n", lines) + "\n", "diagnose", Shell.STAND, "--fed-from", "mains", "--draws", "16");
    }

    /** What was printed after a line was typed, up to the next prompt. */
    private static String after(Shell.Done done, String typed) {
        int at = done.out().indexOf("> " + typed + "\n");
        assertThat(at).as("typed: %s in\n%s", typed, done.out()).isNotNegative();
        String rest = done.out().substring(at + typed.length() + 3);
        int end = rest.indexOf("\n\n");
        int prompt = rest.indexOf("> ");
        return prompt < 0 ? rest : rest.substring(0, Math.max(end, prompt));
    }

    @Test
    void itSaysWhichMachineAndAsks() {
        Shell.Done done = talk("quit");
        assertThat(done.exitCode()).isZero();
        assertThat(done.out())
                .startsWith("Fellmoor Filling Stand, revision B, fed from the mains\n")
                .contains("Next: ", "○ owner may do this", "Say ", "Why ");
        assertThat(done.out().lines())
                .allSatisfy(line -> assertThat(Lines.width(line)).isLessThanOrEqualTo(100));
    }

    @Test
    void theEndOfInputEndsPolitely() {
        Shell.Done done = Shell.typed("", "diagnose", Shell.STAND, "--draws", "16");
        assertThat(done.exitCode()).isZero();
        assertThat(done.out()).endsWith("> \n");
    }

    @Test
    void answersComeInAnyOrderAndSeveralAtOnce() {
        Shell.Done done = talk("house breaker after switching on: on; " + COLD + ": 0.05 bar", "known", "quit");
        assertThat(done.exitCode()).isEqualTo(Wetside.FINDINGS);
        assertThat(done.out())
                .contains("✓ house breaker after switching on: on", "✓ " + COLD + ": 0.05 bar", "Causes")
                .contains("+ " + COLD + ": 0.05 bar (strong)");
        assertThat(after(done, "known")).contains("▼  0.05 bar", "without fault");
    }

    @Test
    void aNumberAloneIsInTheUnitAskedForAndACommaMayBeThePoint() {
        assertThat(talk("ask " + COLD, "1,9").out()).contains("✓ " + COLD + ": 1.90 bar");
        assertThat(talk(COLD + ": 1.9").out()).contains("✓ " + COLD + ": 1.90 bar");
        assertThat(talk("ask " + COLD, "190 kPa").out()).contains("✓ " + COLD + ": 1.90 bar");
    }

    @Test
    void theNumberOfAnOptionStandsForIt() {
        Shell.Done done = talk("ask power lamp", "1");
        assertThat(after(done, "ask power lamp")).contains("1  dark", "2  lit");
        assertThat(done.out()).contains("✓ power lamp: dark");
    }

    @Test
    void dontKnowAndCantReachAreAnswersAndAreNotAskedAgain() {
        Shell.Done done = talk("ask " + COLD, "can't reach", "list gauge", "known");
        assertThat(done.out()).contains("✓ " + COLD + ": don't know");
        assertThat(after(done, "list gauge")).doesNotContain(COLD).contains("pump gauge at rest, hot");
        assertThat(after(done, "known")).contains("  " + COLD + "    don't know");
    }

    @Test
    void undoTakesTheLastAnswerBackAndLeavesNoTrace() {
        Shell.Done once = talk("quit");
        Shell.Done undone = talk(COLD + ": 0.05 bar", "undo", "known", "undo", "quit");
        assertThat(after(undone, "undo")).contains("Taken back: " + COLD + ": 0.05 bar");
        assertThat(after(undone, "known")).contains("Known: nothing yet");
        assertThat(undone.out()).contains("There is nothing to take back.");
        assertThat(undone.exitCode()).isEqualTo(once.exitCode());
        String asked =
                once.out().substring(once.out().indexOf("Next: "), once.out().indexOf("> "));
        assertThat(undone.out()
                        .split(java.util.regex.Pattern.quote(
                                asked.lines().findFirst().orElseThrow())))
                .hasSizeGreaterThan(2);
    }

    @Test
    void whyTellsOfTheStepOfACauseAndAgainstOne() {
        Shell.Done done = talk("why", COLD + ": 0.05 bar", "why shut", "why not works", "why not nonsense", "why not");
        assertThat(after(done, "why")).contains("bits in", "Instead: ");
        assertThat(after(done, "why shut")).contains("left shut", "+ " + COLD + ": 0.05 bar (strong)");
        assertThat(after(done, "why not works")).contains("works as it should", "beside", "− " + COLD);
        assertThat(after(done, "why not nonsense")).contains("No cause has \"nonsense\" in its name");
        assertThat(after(done, "why not")).contains("Why not what?");
    }

    @Test
    void listNumbersWhatCanBeAskedAndAskTakesTheNumber() {
        Shell.Done done = talk("list", "ask 2", "quit");
        String second = after(done, "list")
                .lines()
                .filter(l -> l.matches(" +2  .*"))
                .findFirst()
                .orElseThrow()
                .strip()
                .split(" {2,}")[1];
        assertThat(done.out().substring(done.out().indexOf("> ask 2"))).contains("\n" + second);
    }

    @Test
    void whatIsNoAnswerIsToldAndAskedAgain() {
        Shell.Done done = talk("ask " + COLD, "twelve", "90 bar", "gauge pressure: 2 bar", "gauge: 2 bar", "quit");
        assertThat(after(done, "twelve")).contains("\"twelve\"");
        assertThat(after(done, "90 bar")).contains("cannot be 90.0 bar: whatever is wrong with this machine");
        assertThat(after(done, "gauge pressure: 2 bar")).contains("No reading \"gauge pressure\"");
        assertThat(after(done, "gauge: 2 bar")).contains("\"gauge\" may be " + COLD + "; pump gauge at rest, hot");
        assertThat(done.out()).doesNotContain("✓");
        assertThat(done.exitCode()).isZero();
    }

    @Test
    void oneWrongAnswerOfSeveralTakesNone() {
        Shell.Done done = talk("power lamp: lit; " + COLD + ": 90 bar", "known");
        assertThat(after(done, "known")).contains("nothing yet");
    }

    @Test
    void aRepairEndsInFixedOrGoesOn() {
        Shell.Done done = talk("fixed", COLD + ": 0.0 bar; mains cock stands: shut", "list open it", "ask 1", "quit");
        assertThat(after(done, "fixed")).contains("No repair is being tried");
        String repair = "cock: open it";
        Shell.Done bad = talk(COLD + ": 0.0 bar", "ask " + number(repair, COLD + ": 0.0 bar"), "still bad", "known");
        assertThat(bad.out()).contains("1  fixed", "2  still bad");
        assertThat(after(bad, "known")).contains(repair, "done, and it is still there");
        Shell.Done fixed = talk(COLD + ": 0.0 bar", "ask " + number(repair, COLD + ": 0.0 bar"), "1");
        assertThat(fixed.out()).contains("Good. Prove it before it goes home: ");
        assertThat(fixed.exitCode()).isEqualTo(Wetside.FINDINGS);
    }

    /** The number a repair has in the list after an answer. */
    private static String number(String repair, String answer) {
        return after(talk(answer, "list " + repair), "list " + repair)
                .lines()
                .filter(l -> l.matches(" +\\d+  " + repair + " .*"))
                .findFirst()
                .orElseThrow()
                .strip()
                .split(" ")[0];
    }

    @Test
    void aRepairInsideShowsWhatComesBeforeHandsDoAnything() {
        String[] technician = {"diagnose", Shell.STAND, "--who", "qualified", "--draws", "16"};
        String dark = "power lamp: dark; house breaker after switching on: on; power switch line pole: continuity\n";
        String list = Shell.typed(dark + "list lamp:\n", technician).out();
        String number = list.lines()
                .filter(l -> l.matches(" +\\d+  \\S+: .*[□△]  repair"))
                .findFirst()
                .orElseThrow()
                .strip()
                .split(" ")[0];
        String repair = Shell.typed(dark + "ask " + number + "\n", technician).out();
        assertThat(repair.substring(repair.indexOf("> ask")))
                .contains("Before       Switch off, unplug", "Caution ")
                .containsSubsequence("Next: ", "Before ", "Caution ", "1  fixed");
    }

    @Test
    void theQuestionsGoAsideForPrograms() {
        Shell.Done done = Shell.typed(
                COLD + ": 0.05 bar\n", "diagnose", Shell.STAND, "--fed-from", "mains", "--draws", "16", "--json");
        assertThat(done.out()).startsWith("{").contains("\"reading\" : \"" + COLD + "\"", "\"value\" : 0.05");
        assertThat(done.err()).contains("Next: ");
        List<JsonNode> repairs = new ArrayList<>();
        JsonMapper.shared().readTree(done.out()).get("steps").forEach(s -> {
            if (s.get("sort").asString().equals("repair")) {
                repairs.add(s);
            }
        });
        assertThat(repairs).isNotEmpty().allSatisfy(s -> {
            assertThat(s.has("caution")).as(s.toString()).isTrue();
            assertThat(s.get("who").asString().equals("owner")
                            || s.get("caution").asString().startsWith("Switch off, unplug"))
                    .as(s.toString())
                    .isTrue();
        });
    }

    @Test
    void answersAreTakenWhileDrawsStillArrive() {
        Shell.Done done = Shell.typed(
                "power lamp: lit\nundo\nquit\n", "diagnose", Shell.STAND, "--draws", "1024", "--revision", "A");
        assertThat(done.out()).containsPattern("Causes so far, from \\d{1,3} of 1024 draws each");
        assertThat(done.exitCode()).isZero();
    }

    @Test
    void helpNamesEveryWord() {
        Shell.Done done = talk("help");
        for (Said.Word word : Said.Word.values()) {
            assertThat(after(done, "help")).contains(word.phrase);
        }
    }
}
