package wetside.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShopTest {
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

    @TempDir
    Path folder;

    private static Clock at(Instant now) {
        return Clock.fixed(now, ZoneOffset.UTC);
    }

    private static long machine(Shop shop, String serial) {
        Register register = new Register(shop);
        long owner = register.owner("R. Osgood", "0100 200", "", "");
        return register.machine(new RegisteredMachine(
                0, serial, "twin-boiler-lever", "B", "", owner, "mains", 2e5, null, 230.0, null, null, "", "", 0));
    }

    @Test
    void aJobIsThereAfterOpeningAgain() {
        try (Shop shop = Shop.open(folder)) {
            long number = new Jobs(shop, at(NOON)).open(machine(shop, "C 24 0718"), "it drips", "desk");
            assertThat(number).isEqualTo(2001);
        }
        try (Shop shop = Shop.open(folder)) {
            Jobs jobs = new Jobs(shop, at(NOON));
            Job job = jobs.byNumber(2001).orElseThrow();
            assertThat(job.state()).isEqualTo(JobState.ASKED);
            assertThat(job.opened()).isEqualTo(NOON);
            assertThat(jobs.timeline(job.id())).extracting(Entry::words).containsExactly("it drips");
            assertThat(jobs.openTickets()).extracting(Jobs.Ticket::owner).containsExactly("R. Osgood");
            assertThat(new Register(shop).bySerial("C 24 0718").orElseThrow().supplyPressure())
                    .isEqualTo(2e5);
        }
    }

    @Test
    void whatIsAskedAgainAfterARepairStandsBesideWhatWasAnsweredBefore() {
        try (Shop shop = Shop.open(folder)) {
            Jobs jobs = new Jobs(shop, at(NOON));
            long job = jobs.byNumber(jobs.open(machine(shop, "1"), "slow", "desk"))
                    .orElseThrow()
                    .id();
            Answered answered = new Answered(shop, at(NOON));
            answered.give(job, "flow in 10 s", "4 g", "Ines");
            answered.give(job, "flow in 10 s", "5 g", "Ines");
            answered.give(job, "jet: clean", Answered.STILL_BAD, "Ines");
            answered.give(job, "flow in 10 s", "30 g", "Ines");
            assertThat(answered.standing(job)).extracting(Answer::said).containsExactly("5 g", "still bad", "30 g");
            answered.takeBack(job, "flow in 10 s");
            assertThat(answered.standing(job)).extracting(Answer::said).containsExactly("5 g", "still bad");
            assertThat(answered.all(job)).hasSize(4);
        }
    }

    @Test
    void ofTwoWhoMoveAJobTheSecondIsTold() {
        try (Shop shop = Shop.open(folder)) {
            Jobs jobs = new Jobs(shop, at(NOON.plus(Duration.ofDays(1))));
            long number = jobs.open(machine(shop, "1"), "hums", "desk");
            jobs.move(number, JobState.ON_BENCH, "Ines", 1);
            assertThatThrownBy(() -> jobs.move(number, JobState.WAITING_FOR_PART, "Tomas", 1))
                    .isInstanceOf(Conflict.class)
                    .hasMessageContaining("changed by Ines");
            Job job = jobs.byNumber(number).orElseThrow();
            assertThat(job.state()).isEqualTo(JobState.ON_BENCH);
            assertThat(jobs.timeline(job.id())).extracting(Entry::sort).containsExactly("said", "state");
        }
    }

    @Test
    void wordsAreFoundByTheirBeginnings() {
        try (Shop shop = Shop.open(folder)) {
            long number =
                    new Jobs(shop, at(NOON)).open(machine(shop, "H 21 0402"), "Steam comes out underneath", "desk");
            Words words = new Words(shop);
            assertThat(words.find("steam under", 10)).extracting(Words.Hit::ref).containsExactly("" + number);
            assertThat(words.find("0402", 10)).extracting(Words.Hit::sort).containsExactlyInAnyOrder("machine", "job");
            assertThat(words.find("\"*; DROP", 10)).isEmpty();
            assertThat(words.find("  ", 10)).isEqualTo(List.of());
        }
    }

    @Test
    void oneProcessHasAFolder() {
        try (Shop shop = Shop.open(folder)) {
            assertThat(shop.folder()).isEqualTo(folder);
            assertThatThrownBy(() -> Shop.open(folder))
                    .isInstanceOf(ShopTrouble.class)
                    .hasMessageContaining("another Wetside");
        }
    }

    @Test
    void aFileThatIsNoShopIsLeftAsItIs() throws IOException {
        Path file = folder.resolve(Shop.FILE);
        Files.writeString(file, "this is my shopping list, and it is long enough to look at\n".repeat(100));
        assertThatThrownBy(() -> Shop.open(folder))
                .isInstanceOf(ShopTrouble.class)
                .hasMessageContaining("no file of a workshop");
        assertThat(Files.readString(file)).startsWith("this is my shopping list");
    }

    @Test
    void aNewerFileIsRefused() {
        try (Shop shop = Shop.open(folder)) {
            shop.change(h ->
                    h.execute("INSERT INTO flyway_schema_history (installed_rank, version, description, type, script,"
                            + " checksum, installed_by, execution_time, success)"
                            + " VALUES (99, '99', 'later', 'SQL', 'V99__later.sql', 1, 'x', 1, 1)"));
        }
        assertThatThrownBy(() -> Shop.open(folder))
                .isInstanceOf(ShopTrouble.class)
                .hasMessageContaining("newer Wetside");
    }

    /** Another process reads it, open or closed, and can neither write nor make anything. */
    @Test
    void readingIsOnlyReading() throws IOException {
        assertThatThrownBy(() -> Shop.reading(folder)).hasMessageContaining("no workshop in");
        Files.writeString(folder.resolve("notes.txt"), "not a database, but long enough to be looked at twice");
        assertThatThrownBy(() -> Shop.reading(folder.resolve("notes.txt"))).isInstanceOf(ShopTrouble.class);
        Path data = folder.resolve("data");
        try (Shop open = Shop.open(data)) {
            new Jobs(open, at(NOON)).open(machine(open, "1"), "hums", "desk");
            try (Shop other = Shop.reading(data)) {
                assertThat(new Jobs(other, at(NOON)).byNumber(2001)).isPresent();
                assertThatThrownBy(() -> new Jobs(other, at(NOON)).note(2001, "note", "x", "y", "{}", null))
                        .hasMessageContaining("may not be written");
            }
        }
        List<Path> before = files(data);
        try (Shop closed = Shop.reading(data.resolve(Shop.FILE))) {
            assertThat(new Jobs(closed, at(NOON)).byNumber(2001)).isPresent();
        }
        assertThat(files(data)).isEqualTo(before);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Test
    void theNewestMigrationIsKnown() {
        Shop.open(folder).close();
        try (Shop shop = Shop.reading(folder)) {
            assertThat(shop.<Integer>read(h -> h.createQuery("SELECT COUNT(*) FROM flyway_schema_history")
                            .mapTo(Integer.class)
                            .one()))
                    .isEqualTo(Shop.NEWEST);
        }
    }
}
