package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.kind.Kinds;
import wetside.machine.BadFile;
import wetside.machine.MachineFile;
import wetside.shop.RegisteredMachine;

/** The register of machines, and the machine files that come with Wetside; what of them is looked for decides where one goes. */
public final class MachinesPages implements Routes {
    private final Workshop workshop;
    private final Pages pages;
    private final Kept<String, List<FileRow>> files = new Kept<>(1);

    MachinesPages(Workshop workshop, Pages pages) {
        this.workshop = workshop;
        this.pages = pages;
    }

    /**
     * @param what    what one comes for
     * @param lead    a line under the heading
     * @param ending  of the addresses behind the machines
     * @param all     how many are on the register
     */
    public record View(
            String what, String lead, String ending, String sought, int all, List<Row> rows, List<FileRow> files) {}

    /** A machine on the register. */
    public record Row(String address, String serial, String title, String owner, String fed, String note) {}

    /** A machine file. */
    public record FileRow(String name, String title, String revisions) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/machines", c -> show(c, "Machines", "Every machine on the register.", ""));
        routes.get(
                "/readings",
                c -> show(
                        c,
                        "Readings",
                        "Whose? What it should read where it stands, for the pen or the screen.",
                        "/readings"));
        routes.get("/run", c -> show(c, "Run", "Which one? Its twin runs here, and may be broken.", "/run"));
    }

    private void show(Context context, String menu, String lead, String ending) {
        String sought =
                context.queryParamAsClass("q", String.class).getOrDefault("").strip();
        if (sought.length() > 200) {
            throw new NotFoundResponse();
        }
        List<RegisteredMachine> all = workshop.register().machines();
        List<Row> rows = new ArrayList<>();
        for (RegisteredMachine m : all) {
            Row row = row(m);
            if (fits(sought, row.serial(), row.title(), row.owner(), row.note())) {
                rows.add(row);
            }
        }
        List<FileRow> known = files.of("all", MachinesPages::files).stream()
                .filter(f -> fits(sought, f.name(), f.title()))
                .toList();
        pages.show(context, "machines", menu, menu, new View(menu, lead, ending, sought, all.size(), rows, known));
    }

    private Row row(RegisteredMachine m) {
        return new Row(
                "/machines/" + m.id(),
                m.serial(),
                workshop.models().title(m),
                workshop.register().owner(m.ownerId()).name(),
                m.fedFrom(),
                m.note());
    }

    /** Every word is in one of the texts. */
    static boolean fits(String sought, String... texts) {
        String all = String.join(" ", texts).toLowerCase(Locale.ROOT);
        return List.of(sought.toLowerCase(Locale.ROOT).split("\\s+")).stream().allMatch(all::contains);
    }

    private static List<FileRow> files() {
        List<FileRow> rows = new ArrayList<>();
        for (String name : MachineFile.names()) {
            try {
                MachineFile file = MachineFile.bundled(name, Kinds.declarations());
                rows.add(new FileRow(
                        name, file.newest().identity().title(), String.join(" and ", file.revisionNames())));
            } catch (BadFile e) {
                rows.add(new FileRow(name, name, "cannot be read"));
            }
        }
        return rows;
    }

    /** Addresses with what follows the question mark. */
    static String query(Map<String, String> parameters) {
        StringBuilder query = new StringBuilder("?");
        parameters.forEach(
                (name, value) -> query.append(name).append('=').append(value).append('&'));
        return query.toString();
    }
}
