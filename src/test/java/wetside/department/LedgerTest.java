package wetside.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;
import wetside.shop.Answered;
import wetside.shop.Entry;
import wetside.shop.Job;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Outcomes;
import wetside.shop.Register;
import wetside.shop.Registered;
import wetside.shop.Shop;

class LedgerTest {
    private static final String MODEL = "spring-lever";
    private static final String SEAL = "group: upper piston seal worn";
    private static final String WORD = "Ines";
    private static final Instant NOW = Instant.parse("2026-03-05T10:00:00Z");

    @TempDir
    Path folder;

    private Shop shop;
    private Jobs jobs;
    private Outcomes outcomes;
    private Ledger ledger;
    private final Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);

    @BeforeEach
    void open() {
        shop = Shop.open(folder);
        jobs = new Jobs(shop, clock);
        outcomes = new Outcomes(shop, clock);
        ledger = new Ledger(outcomes);
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private long machine(String serial, String revision) {
        return Registered.machine(shop, serial, MODEL, revision, "", "N. " + serial, "tank");
    }

    private long done(long machine, String finding, String... proofs) {
        long number = jobs.open(machine, "it drips", WORD);
        jobs.conclude(number, finding, "", WORD, Jobs.ANY);
        for (String proof : proofs) {
            jobs.note(number, "proof", WORD, "passed: " + proof, "{}", null);
        }
        jobs.move(number, JobState.DONE, WORD, Jobs.ANY);
        return number;
    }

    private List<String> proofs() {
        return ledger.of(MODEL).model().orElseThrow().proofs().get(SEAL);
    }

    private Counted only() {
        assertThat(ledger.of(MODEL).jobs()).hasSize(1);
        return ledger.of(MODEL).jobs().get(0);
    }

    @Test
    void aShopWithoutJobsHasNothingToSay() {
        assertThat(ledger.of(MODEL).counting()).isZero();
        assertThat(ledger.of("no such file").model()).isEmpty();
    }

    @Test
    void provedCountsWholeByWordInPart() {
        long machine = machine("L 1", "A");
        long number = done(machine, SEAL);
        assertThat(only().by()).isEqualTo(Counted.By.WORD);
        assertThat(only().closed().credit()).isEqualTo(Map.of(SEAL, 0.8));
        proofs().forEach(p -> jobs.note(number, "proof", WORD, "passed: " + p + " – as it should", "{}", null));
        assertThat(only().by()).isEqualTo(Counted.By.PROOF);
        assertThat(only().closed().credit()).isEqualTo(Map.of(SEAL, 1.0));
        jobs.note(number, "proof", WORD, "failed: " + proofs().get(0), "{}", null);
        assertThat(only().by()).isEqualTo(Counted.By.WORD);
    }

    @Test
    void proofGivenBeforeTheFindingShowsNothingOfIt() {
        long number = done(machine("L 1", "A"), SEAL, proofs().toArray(String[]::new));
        assertThat(only().by()).isEqualTo(Counted.By.PROOF);
        jobs.conclude(number, SEAL, "again", WORD, Jobs.ANY);
        assertThat(only().by()).isEqualTo(Counted.By.WORD);
    }

    @Test
    void beliefKeptWithTheFindingIsWhatCounts() {
        long number = jobs.open(machine("L 1", "A"), "it drips", WORD);
        Job job = jobs.byNumber(number).orElseThrow();
        new Answered(shop, clock)
                .found(
                        job.id(),
                        SEAL,
                        WORD,
                        "Seal",
                        "{\"cause\":\"x\",\"believed\":{\"" + SEAL + "\":0.85,\"works as it should\":0.1}}");
        assertThat(ledger.of(MODEL).jobs()).isEmpty();
        jobs.move(number, JobState.DONE, WORD, Jobs.ANY);
        assertThat(only().by()).isEqualTo(Counted.By.BELIEF);
        assertThat(only().closed().credit()).isEqualTo(Map.of(SEAL, 0.85, "works as it should", 0.1));
    }

    @Test
    void whatIsReopenedCorrectedOrLeftOutWasNeverThere() {
        long machine = machine("L 1", "A");
        done(machine, SEAL, proofs().toArray(String[]::new));
        Practice one = ledger.of(MODEL);
        long number = done(machine, "works as it should");
        assertThat(ledger.of(MODEL).counting()).isEqualTo(2);
        jobs.move(number, JobState.ON_BENCH, WORD, Jobs.ANY);
        assertThat(ledger.of(MODEL).experience()).isEqualTo(one.experience());
        jobs.move(number, JobState.DONE, WORD, Jobs.ANY);
        outcomes.leaveOut(number, "a machine of ours", "Tomas");
        assertThat(ledger.of(MODEL).experience()).isEqualTo(one.experience());
        assertThat(ledger.of(MODEL).jobs().get(1).outcome().leftOut()).isEqualTo("a machine of ours");
        outcomes.leaveOut(number, "", "Tomas");
        assertThat(ledger.of(MODEL).counting()).isEqualTo(2);
        Job job = jobs.byNumber(number).orElseThrow();
        Entry finding = jobs.timeline(job.id()).stream()
                .filter(e -> e.sort().equals("finding"))
                .findFirst()
                .orElseThrow();
        jobs.note(number, "note", WORD, "wrong one picked", "{}", finding.id());
        assertThat(ledger.of(MODEL).experience()).isEqualTo(one.experience());
        jobs.conclude(number, "works as it should", "", WORD, Jobs.ANY);
        assertThat(ledger.of(MODEL).counting()).isEqualTo(2);
    }

    /** Read on job by job, or all at once by another that comes later: the same to the last bit. */
    @Test
    void readOnIsReadAtOnce() {
        long older = machine("L 1", "A");
        long newer = machine("L 2", "B");
        for (int i = 0; i < 12; i++) {
            done(i % 2 == 0 ? older : newer, i % 3 == 0 ? SEAL : "works as it should");
            ledger.of(MODEL);
        }
        assertThat(ledger.of(MODEL).experience())
                .isEqualTo(new Ledger(outcomes).of(MODEL).experience());
        assertThat(ledger.of(MODEL).counting()).isEqualTo(12);
    }

    @Test
    void anotherModelsJobsChangeNothing() {
        done(machine("L 1", "A"), SEAL);
        Practice before = ledger.of(MODEL);
        ledger.of("thermoblock");
        long other = Registered.machine(shop, "T 1", "thermoblock", "A", "", "O", "tank");
        done(other, "pump: piston stuck");
        assertThat(ledger.of(MODEL)).isSameAs(before);
        assertThat(ledger.of("thermoblock").counting()).isEqualTo(1);
        assertThat(ledger.models()).containsOnly(Map.entry(MODEL, 1L), Map.entry("thermoblock", 1L));
    }

    @Test
    void aJobFadesByItsMonthsAndIsWeighedByItsCredit() {
        done(machine("L 1", "A"), SEAL);
        Practice practice = ledger.of(MODEL);
        assertThat(practice.weight(only(), NOW)).isEqualTo(0.8, within(1e-12));
        assertThat(practice.weight(only(), Instant.parse("2027-03-05T10:00:00Z")))
                .isEqualTo(0.8 * Math.pow(0.985, 12), within(1e-12));
    }

    /** The first of the signs kept at intake is what sort of complaint it was. */
    @Test
    void jobsWithTheSameSignWeighMoreForACaseThatHasIt() {
        long machine = machine("L 1", "A");
        for (int i = 0; i < 8; i++) {
            long number = jobs.open(machine, "it drips", WORD);
            String sign = i < 4 ? "steam at rest" : "shot volume";
            jobs.note(number, "signs", WORD, sign + "; noise at rest. When: hot", "{}", null);
            jobs.conclude(number, i < 4 ? SEAL : "works as it should", "", WORD, Jobs.ANY);
            jobs.move(number, JobState.DONE, WORD, Jobs.ANY);
        }
        Practice practice = ledger.of(MODEL);
        assertThat(practice.jobs()).extracting(j -> j.outcome().complaint()).contains("steam at rest", "shot volume");
        Library shipped = new Library(practice.model().orElseThrow().causes(), List.of(), noSignatures(practice));
        double all = share(practice.on(shipped, "", NOW));
        assertThat(share(practice.on(shipped, "steam at rest", NOW))).isGreaterThan(all);
        assertThat(share(practice.on(shipped, "shot volume", NOW))).isLessThan(all);
        assertThat(share(shipped)).isLessThan(share(practice.on(shipped, "shot volume", NOW)));
    }

    private static Signatures noSignatures(Practice practice) {
        return Signatures.empty(practice.model().orElseThrow().causes().size(), 0);
    }

    private static double share(Library library) {
        double all = library.causes().stream().mapToDouble(Cause::weight).sum();
        return library.causes().get(library.cause(SEAL)).weight() / all;
    }

    @Test
    void twoCausesAtOnceTakeHalfEach() {
        String other = "works as it should";
        String both = Cause.pair(SEAL, other);
        done(machine("L 1", "A"), both);
        assertThat(only().closed().credit()).isEqualTo(Map.of(SEAL, 0.4, other, 0.4));
    }

    /** By hand: bought two years ago, one proved job: (50 share + 1) in (50 / rate of all) + 17 532 h. */
    @Test
    void ratesByTimeStandOnTheTimeMachinesWereOwned() {
        long machine = machine("L 1", "A");
        done(machine, SEAL, "nothing");
        proofs().forEach(p -> jobs.note(2001, "proof", WORD, "passed: " + p, "{}", null));
        assertThat(failure().perHour()).isNull();
        new Register(shop).bought(machine, "2024-03-05");
        Model model = ledger.of(MODEL).model().orElseThrow();
        double faulty = model.causes().stream().mapToDouble(Cause::weight).sum() - 0.3;
        double share = model.causes().stream()
                        .filter(c -> c.id().equals(SEAL))
                        .findFirst()
                        .orElseThrow()
                        .weight()
                / faulty;
        double hours = 730 * 24 + 10;
        assertThat(failure().perHour().mean()).isEqualTo((50 * share + 1) / (50 / model.rate() + hours), within(1e-12));
    }

    private Failures.Failure failure() {
        return ledger.figures(MODEL, NOW).failures().all().stream()
                .filter(f -> f.id().equals(SEAL))
                .findFirst()
                .orElseThrow();
    }
}
