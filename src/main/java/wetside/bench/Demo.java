package wetside.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.shop.Closing;
import wetside.shop.Entry;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.MachineWaters;
import wetside.shop.Part;
import wetside.shop.Reading;
import wetside.shop.Readings;
import wetside.shop.Register;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shelf;
import wetside.shop.Shop;

/**
 * An invented workshop to look round in, from {@code demo/workshop.txt}: told day by day through the same doors as a real
 * one, with a clock that is set to each moment. The same every time, but for today's date.
 */
public final class Demo {
    private static final String FILE = "/wetside/bench/demo/workshop.txt";

    private final Clock now;
    private final Moment moment;
    private final Register register;
    private final Shelf shelf;
    private final Jobs jobs;
    private final Readings readings;
    private final Closing closing;
    private final MachineWaters waters;
    private final Map<String, Long> machines = new HashMap<>();
    private final Map<String, Long> owners = new HashMap<>();

    private Demo(Shop shop, Clock now) {
        this.now = now;
        moment = new Moment(now);
        register = new Register(shop);
        shelf = new Shelf(shop, moment);
        jobs = new Jobs(shop, moment);
        readings = new Readings(shop, moment);
        closing = new Closing(shop, moment);
        waters = new MachineWaters(shop, moment);
    }

    /** A clock that stands where it was set. */
    private static final class Moment extends Clock {
        private final Clock now;
        private Instant at;

        Moment(Clock now) {
            this.now = now;
            at = now.instant();
        }

        @Override
        public Instant instant() {
            return at;
        }

        @Override
        public ZoneId getZone() {
            return now.getZone();
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    /** Fills a shop that has no machine yet; one that has is left as it is. */
    public static boolean fill(Shop shop, Clock now) {
        if (!new Register(shop).machines().isEmpty()) {
            return false;
        }
        new Demo(shop, now).tell(lines());
        return true;
    }

    private static List<String[]> lines() {
        try (InputStream in = Demo.class.getResourceAsStream(FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .map(l -> l.strip().split("\\s*\\|\\s*", -1))
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException("the jar lacks " + FILE, e);
        }
    }

    private void tell(List<String[]> lines) {
        List<List<String[]>> histories = new ArrayList<>();
        for (String[] line : lines) {
            switch (line[0]) {
                case "machine" -> machine(line);
                case "shelf" -> shelf(line);
                case "water" -> water(line);
                case "job" -> histories.add(new ArrayList<>(List.<String[]>of(line)));
                default -> histories.get(histories.size() - 1).add(line);
            }
        }
        // Numbers are given in the order of taking in.
        histories.sort((a, b) -> at(a.get(1)[0]).compareTo(at(b.get(1)[0])));
        histories.forEach(this::job);
    }

    private void machine(String[] l) {
        long owner = owners.computeIfAbsent(l[5], name -> register.owner(name, l[6], "", l[7]));
        RegisteredMachine m = new RegisteredMachine(
                0,
                l[1],
                l[2],
                l[3],
                l[4],
                owner,
                l[8],
                null,
                Double.parseDouble(l[9]) * 1e-4,
                Double.valueOf(l[10]),
                Double.valueOf(l[11]),
                null,
                "",
                "",
                0);
        machines.put(l[1], register.machine(m));
    }

    private void water(String[] l) {
        moment.at = at(l[2]);
        String drops = "drops of 1 °dH";
        Map<String, String> said = new HashMap<>(Map.of(
                "title", l[4],
                "hardness", l[5],
                "hardness-unit", drops,
                "alkalinity", l[6],
                "alkalinity-unit", drops,
                "conductivity", l[7],
                "conductivity-unit", "µS/cm",
                "ph", l[8],
                "treatment", l[9],
                "bypass", l[10]));
        WaterEntry entry = WaterEntry.of(said);
        waters.keep(machines.get(l[1]), entry.sheet(), entry.encoded(), Double.parseDouble(l[11]) * 1e-4, l[3]);
    }

    private void shelf(String[] l) {
        shelf.add(new Part(
                0,
                l[1],
                l[2],
                "",
                l[3],
                Long.parseLong(l[4]),
                Long.parseLong(l[5]),
                Long.parseLong(l[6]),
                Double.valueOf(l[7]),
                0));
    }

    /** "3 9:30" is three days ago at that time, "@90" ninety minutes ago. */
    private Instant at(String when) {
        if (when.startsWith("@")) {
            return now.instant().minus(Duration.ofMinutes(Long.parseLong(when.substring(1))));
        }
        String[] parts = when.split(" ");
        LocalTime time = LocalTime.parse(parts[1].length() == 4 ? "0" + parts[1] : parts[1]);
        return LocalDate.now(now)
                .minusDays(Long.parseLong(parts[0]))
                .atTime(time)
                .atZone(now.getZone())
                .toInstant();
    }

    private void job(List<String[]> history) {
        long number = 0;
        for (String[] line : history.subList(1, history.size())) {
            moment.at = at(line[0]);
            if (line[2].equals("open")) {
                number = jobs.open(machines.get(history.get(0)[1]), line[3], line[1]);
            } else {
                step(number, line[1], line[2], line[3], line.length > 4 ? line[4] : "");
            }
        }
    }

    private void step(long number, String who, String sort, String words, String more) {
        switch (sort) {
            case "state" -> jobs.move(number, JobState.valueOf(words), more, who, Jobs.ANY);
            case "with" ->
                jobs.assign(
                        number,
                        words,
                        LocalDate.now(now).plusDays(Long.parseLong(more)).toString(),
                        who,
                        Jobs.ANY);
            case "finding" -> jobs.conclude(number, words, more, who, Jobs.ANY);
            case "part" -> shelf.use(number, words, more, 1, who, Jobs.ANY);
            case "pass" -> jobs.note(number, "proof", who, "passed: " + words, "{}", null);
            case "time" -> closing.spend(number, Double.parseDouble(words), more, who, Jobs.ANY);
            case "sign" -> closing.sign(number, words, "", who, Jobs.ANY);
            case "found", "left" -> {
                String[] read = words.split(" = ");
                readings.take(number, new Reading.Taken(sort, read[0], read[1]), who, Jobs.ANY);
            }
            case "correct" -> {
                List<Entry> all =
                        jobs.timeline(jobs.byNumber(number).orElseThrow().id());
                jobs.note(
                        number,
                        "note",
                        who,
                        words,
                        "{}",
                        all.get(all.size() - 1).id());
            }
            default -> jobs.note(number, sort, who, words, "{}", null);
        }
    }
}
