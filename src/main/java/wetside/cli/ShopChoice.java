package wetside.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import picocli.CommandLine.Option;
import wetside.casework.Session;
import wetside.department.Ledger;
import wetside.department.Practice;
import wetside.machine.Machine;
import wetside.shop.Outcomes;
import wetside.shop.Shop;
import wetside.shop.ShopTrouble;

/** The workshop whose closed jobs say how often causes are. */
final class ShopChoice {
    @Option(
            names = "--shop",
            paramLabel = "FOLDER|FILE",
            description = "a bench's data, read only: its closed jobs on this model say how often which cause is")
    private Path shop;

    private Practice practice;

    /** Reads the jobs on a machine's model, if a shop was named. */
    void read(Machine machine) {
        if (shop == null) {
            return;
        }
        try (Shop open = Shop.reading(shop)) {
            Ledger ledger = new Ledger(new Outcomes(open, Clock.systemUTC()));
            String file = ledger.models().keySet().stream()
                    .filter(f -> id(f).equals(machine.identity().id()))
                    .findFirst()
                    .orElse(machine.identity().id());
            practice = ledger.of(file);
        } catch (ShopTrouble e) {
            throw new BadArgument("--shop: " + e.getMessage());
        }
    }

    /** The name of a machine file without folder and ending. */
    private static String id(String file) {
        String name = Path.of(file).getFileName().toString();
        return name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
    }

    void on(Session session) {
        if (practice != null) {
            Instant now = Instant.now();
            session.rates(library -> practice.on(library, "", now));
        }
    }

    /** Whose rates these are, where a shop was named. */
    Optional<String> words() {
        return Optional.ofNullable(practice).map(p -> {
            int n = p.counting();
            long shipped = Math.round(p.experience().strength());
            return n == 0
                    ? "No closed job of this shop on this model counts yet: shipped rates."
                    : n + (n == 1 ? " job of this shop counts" : " jobs of this shop count") + "; shipped rates as "
                            + shipped + ".";
        });
    }

    Optional<Integer> jobs() {
        return Optional.ofNullable(practice).map(Practice::counting);
    }
}
