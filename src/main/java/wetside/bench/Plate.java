package wetside.bench;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wetside.shop.Job;
import wetside.shop.RegisteredMachine;
import wetside.units.Dimension;
import wetside.units.Display;

/** The machine as its rating plate, at the same place on every page of it. */
public record Plate(List<Cell> cells) {
    private static final List<String> FOOT =
            List.of("Job", "Machine", "Serial", "Fed from", "Supply", "Altitude", "Water sheet", "For machine");
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** What stands in one field of the plate. */
    public record Cell(String label, String value) {}

    /** What every printed sheet says at its foot: machine, serial, installation and date. */
    public String onEverySheet() {
        return cells.stream()
                        .filter(c -> FOOT.contains(c.label()))
                        .map(c -> c.label().equals("Machine") || c.label().equals("Serial") ? c.value() : lower(c))
                        .collect(Collectors.joining(", "))
                + ", printed " + DAY.format(LocalDate.now());
    }

    private static String lower(Cell c) {
        return c.label().toLowerCase(Locale.ROOT) + " " + c.value();
    }

    static Plate of(Workshop workshop, Job job, Display units) {
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell("Job", Long.toString(job.number())));
        cells.addAll(machine(workshop, workshop.register().machine(job.machineId()), units));
        if (!job.technician().isEmpty()) {
            cells.add(new Cell("With", job.technician()));
        }
        return new Plate(cells);
    }

    private static List<Cell> machine(Workshop workshop, RegisteredMachine m, Display units) {
        List<Cell> cells = new ArrayList<>();
        cells.add(new Cell("Machine", workshop.models().title(m)));
        cells.add(new Cell("Serial", m.serial()));
        cells.add(new Cell("Fed from", m.fedFrom()));
        if (m.voltage() != null) {
            cells.add(new Cell("Supply", units.print(m.voltage(), Dimension.VOLTAGE)));
        }
        if (m.altitude() != null) {
            cells.add(new Cell("Altitude", units.print(m.altitude(), Dimension.LENGTH)));
        }
        cells.add(new Cell("Owner", workshop.register().owner(m.ownerId()).name()));
        return cells;
    }
}
