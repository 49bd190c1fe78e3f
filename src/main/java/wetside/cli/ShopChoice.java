package wetside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import picocli.CommandLine.Option;
import wetside.casework.Session;
import wetside.department.JobsFile;
import wetside.department.Ledger;
import wetside.department.Practice;
import wetside.diagnosis.Library;
import wetside.diagnosis.learning.Experience;
import wetside.machine.Machine;
import wetside.shop.Outcomes;
import wetside.shop.Shop;
import wetside.shop.ShopTrouble;

/** The workshop whose closed jobs say how often causes are. */
final class ShopChoice {
    private static final byte[] DATABASE = "SQLite format 3".getBytes(StandardCharsets.US_ASCII);

    @Option(
            names = "--shop",
            paramLabel = "FOLDER|FILE",
            description = "a bench's data, only read, or jobs saved from its Department page: closed jobs on this model"
                    + " say how often which cause is")
    private Path shop;

    private Experience experience;

    /** Reads the jobs on a machine's model, if a shop was named. */
    void read(Machine machine) {
        if (shop != null) {
            String id = machine.identity().id();
            experience = isJobsFile() ? ofFile(id) : ofBench(id);
        }
    }

    private boolean isJobsFile() {
        if (!Files.isRegularFile(shop)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(shop)) {
            return !Arrays.equals(in.readNBytes(DATABASE.length), DATABASE);
        } catch (IOException e) {
            throw new BadArgument("--shop: " + shop + " cannot be read: " + OutputFile.reason(e));
        }
    }

    private Experience ofFile(String id) {
        JobsFile file = JobsFile.read(shop);
        if (!file.machine().equals(id)) {
            throw new BadArgument("--shop: " + shop + " has jobs on " + file.machine() + ", not on " + id);
        }
        return file.experience();
    }

    private Experience ofBench(String id) {
        try (Shop open = Shop.reading(shop)) {
            Ledger ledger = new Ledger(new Outcomes(open, Clock.systemUTC()));
            String file = ledger.models().keySet().stream()
                    .filter(f -> JobsFile.id(f).equals(id))
                    .findFirst()
                    .orElse(id);
            return ledger.of(file).experience();
        } catch (ShopTrouble e) {
            throw new BadArgument("--shop: " + e.getMessage());
        }
    }

    void on(Session session) {
        if (experience != null) {
            session.rates(this::on);
        }
    }

    /** The causes of a library as often as here. */
    Library on(Library library) {
        return experience == null ? library : experience.applied(library, Practice.month(Instant.now()));
    }

    /** Whose rates these are, where a shop was named. */
    Optional<String> words() {
        return jobs().map(n -> n == 0
                ? "No closed job of this shop on this model counts yet: shipped rates."
                : n + (n == 1 ? " job of this shop counts" : " jobs of this shop count") + "; shipped rates as "
                        + Math.round(experience.strength()) + ".");
    }

    Optional<Integer> jobs() {
        return Optional.ofNullable(experience).map(e -> e.jobs().size());
    }
}
