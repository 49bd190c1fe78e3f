package wetside.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wetside.procedure.Procedure.Hazard;
import wetside.procedure.Procedure.Take;
import wetside.procedure.Procedure.Who;
import wetside.procedure.Procedure.Word;
import wetside.run.Action;
import wetside.run.Scenario;

/** What holds for the shipped procedures whatever the machine. */
class ProcedureFilesTest {
    private static final Procedures ALL = Procedures.bundled();

    @Test
    void everyFileIsListed() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("procedures"))) {
            List<String> there = files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".yaml"))
                    .toList();
            assertThat(ProcedureFiles.names()).containsExactlyInAnyOrderElementsOf(there);
        }
    }

    @Test
    void noNameStandsInTwoFiles() {
        Set<String> seen = new HashSet<>();
        List<String> twice = new ArrayList<>();
        for (String file : ProcedureFiles.names()) {
            ProcedureFiles.text(file)
                    .lines()
                    .filter(l -> l.matches("  [^ #-].*:"))
                    .filter(l -> !seen.add(l))
                    .forEach(twice::add);
        }
        assertThat(seen)
                .hasSize(ALL.all().size() + ALL.routines().size() + ALL.words().size());
        assertThat(twice).isEmpty();
    }

    @Test
    void ownersStayOutsideAndAwayFromWhatIsLive() {
        assertThat(ALL.all())
                .filteredOn(p -> p.who() == Who.OWNER)
                .hasSizeGreaterThan(30)
                .allSatisfy(p -> {
                    assertThat(p.inside()).as(p.id()).isEmpty();
                    assertThat(p.hazard()).as(p.id()).isIn(Hazard.NONE, Hazard.HOT);
                });
    }

    @Test
    void whatIsReadInsideWithThePlugInIsForQualifiedPeople() {
        assertThat(ALL.all())
                .filteredOn(p -> !p.inside().isEmpty() && !isUnplugged(p))
                .isNotEmpty()
                .allSatisfy(p -> {
                    assertThat(p.who()).as(p.id()).isEqualTo(Who.QUALIFIED);
                    assertThat(p.hazard()).as(p.id()).isEqualTo(Hazard.LIVE);
                });
    }

    @Test
    void whatCanHurtCarriesACaution() {
        assertThat(ALL.all())
                .filteredOn(p -> p.hazard() != Hazard.NONE || !p.inside().isEmpty())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.caution()).as(p.id()).isNotBlank());
    }

    /** In the order of doing: what is said of a panel or lid comes after what is said of the plug. */
    @Test
    void thePlugComesOutBeforeThePanelComesOff() {
        assertThat(ALL.all())
                .filteredOn(p -> !p.inside().isEmpty() && isUnplugged(p))
                .isNotEmpty()
                .allSatisfy(p -> {
                    assertThat(p.caution().toLowerCase(Locale.ROOT)).as(p.id()).contains("plug");
                    String how = String.join(" ", p.how()).toLowerCase(Locale.ROOT);
                    int panel = Math.max(how.indexOf("panel"), how.indexOf("lid off"));
                    assertThat(panel < 0 || how.indexOf("plug") >= 0 && how.indexOf("plug") < panel)
                            .as(p.id() + ": " + how)
                            .isTrue();
                });
    }

    @Test
    void panelsAreAHazard() {
        assertThat(ALL.all())
                .filteredOn(p -> !p.inside().isEmpty())
                .allSatisfy(p -> assertThat(p.hazard()).as(p.id()).isIn(Hazard.INSIDE, Hazard.LIVE));
    }

    @Test
    void wordsRiseAndAreDistinct() {
        for (Procedure p : ALL.all()) {
            List<Word> words = p.answer().words();
            assertThat(words)
                    .as(p.id())
                    .satisfiesAnyOf(
                            w -> assertThat(w).isEmpty(), w -> assertThat(w).hasSizeGreaterThan(1));
            for (int i = 1; i < words.size(); i++) {
                assertThat(words.get(i).from())
                        .as(p.id())
                        .isGreaterThan(words.get(i - 1).from());
            }
            assertThat(words.stream().map(Word::word)).as(p.id()).doesNotHaveDuplicates();
        }
    }

    @Test
    void peopleAreToldEnoughAndNotTooMuch() {
        assertThat(ALL.all()).allSatisfy(p -> {
            assertThat(p.says()).as(p.id()).isNotBlank().doesNotEndWith(".");
            assertThat(p.how()).as(p.id()).hasSizeLessThanOrEqualTo(5);
            assertThat(p.minutes()).as(p.id()).isBetween(0.2, 30.0);
            assertThat(p.answer().mistaken()).as(p.id()).isBetween(0.0, 0.3);
        });
    }

    @Test
    void marksReadAreSetByTheRoutine() {
        for (Procedure p : ALL.all()) {
            for (Scenario way : ways(p.routine())) {
                List<String> marks = way.steps().stream()
                        .filter(Action.Mark.class::isInstance)
                        .map(a -> ((Action.Mark) a).name())
                        .toList();
                for (String mark : List.of(p.reading().from(), p.reading().to())) {
                    if (!mark.isEmpty()) {
                        assertThat(marks).as(p.id()).contains(mark);
                    }
                }
            }
        }
    }

    /** What a way words is said somewhere; a phrase nobody says would be misspelt. */
    @Test
    void wordsOfAWayAreWordsThatAreSaid() {
        StringBuilder said = new StringBuilder();
        ALL.routines().values().forEach(r -> said.append(r.says()));
        ALL.all()
                .forEach(p ->
                        said.append(p.says()).append(p.ask()).append(p.how()).append(p.caution()));
        String all = said.toString().toLowerCase(Locale.ROOT);
        assertThat(ALL.words())
                .isNotEmpty()
                .allSatisfy((way, words) -> assertThat(words.keySet())
                        .as(way)
                        .allSatisfy(phrase -> assertThat(all).contains("{" + phrase + "}")));
    }

    @Test
    void everyPhraseIsClosed() {
        assertThat(ALL.all())
                .allSatisfy(p -> assertThat(Phrases.plain(p.says() + p.ask() + p.how() + p.caution()))
                        .as(p.id())
                        .doesNotContain("{", "}"));
    }

    @Test
    void whatIsTakenOverASpanHasALimitOnlyWhereItNeedsOne() {
        assertThat(ALL.all()).allSatisfy(p -> {
            Take take = p.reading().take();
            boolean needs = take == Take.UNTIL_ABOVE || take == Take.SHARE_ABOVE;
            assertThat(p.reading().beyond() != 0).as(p.id()).isEqualTo(needs);
        });
    }

    /** One run of all routines must stay short, for it is done for every draw of every cause; a cold night is one step. */
    @Test
    void allRoutinesTogetherTakeUnderThreeHours() {
        double seconds = 0;
        for (String routine : ALL.routines().keySet()) {
            if (routine.equals("left overnight")) {
                continue;
            }
            seconds += ways(routine).stream()
                    .mapToDouble(ProcedureFilesTest::seconds)
                    .max()
                    .orElseThrow();
        }
        assertThat(seconds).isLessThan(3 * 3600);
    }

    @Test
    void everyRoutineIsReadOrLeadsToOneThatIs() {
        for (String name : ALL.routines().keySet()) {
            boolean read = ALL.all().stream().anyMatch(p -> p.routine().equals(name));
            boolean leads = ALL.routines().values().stream()
                    .flatMap(r -> r.ways().stream())
                    .anyMatch(w -> w.scenario().from().orElse("").equals(name));
            assertThat(read || leads).as(name).isTrue();
        }
    }

    /** True when the plug is out while the procedure is done. */
    private static boolean isUnplugged(Procedure p) {
        return p.reading().ohmsBetween().size() == 2 || unplugs(p.routine());
    }

    private static boolean unplugs(String routine) {
        return ways(routine).stream()
                .allMatch(s -> s.steps().stream()
                                .anyMatch(a ->
                                        a instanceof Action.Move m && m.handle().endsWith(".plug"))
                        || s.from().map(ProcedureFilesTest::unplugs).orElse(false));
    }

    private static List<Scenario> ways(String routine) {
        return ALL.routine(routine).orElseThrow().ways().stream()
                .map(Routine.Way::scenario)
                .toList();
    }

    private static double seconds(Scenario way) {
        return way.steps().stream()
                .mapToDouble(
                        a -> a instanceof Action.Wait w ? w.seconds() : a instanceof Action.Until u ? u.atMost() : 0)
                .sum();
    }
}
