package wetside.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wetside.cabinet.Cabinet;
import wetside.cabinet.Fitted;
import wetside.casework.Asking;
import wetside.casework.Candidate;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.diagnosis.Who;
import wetside.drawing.PartNumbers;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedure;
import wetside.procedure.Procedures;
import wetside.run.Names;

/** Writes the cards of a machine where it stands. */
public final class Cards {
    /** A sign below this many standard deviations is not worth a line. */
    private static final double WORTH = 1.5;

    private static final int MOST_NOTICES = 3;
    private static final int MOST_CHECKS = 6;

    private final MachineFile file;
    private final Installed installed;
    private final Casework casework;
    private final Optional<Cabinet> cabinet;

    public Cards(MachineFile file, Installed installed, Procedures procedures) {
        this.file = file;
        this.installed = installed;
        casework = installed.casework(procedures);
        cabinet = Cabinet.of(file, installed.machine());
    }

    public Optional<Cabinet> cabinet() {
        return cabinet;
    }

    /**
     * @param id     of a component of the machine
     * @param reader nothing on the card is beyond this person
     * @param draws  machines the twin simulates for each failure
     */
    public Card card(String id, Who reader, int draws) {
        Machine machine = installed.machine();
        Component part = machine.component(id);
        Words words = Words.of(part.kind().name());
        Who level = level(part, words);
        Optional<Fitted> fitted = cabinet.flatMap(c -> c.part(id))
                .filter(f -> reader != Who.OWNER || f.behind().isEmpty());
        Signs signs = Signs.of(casework, id, draws);
        List<Asking> allowed = signs.askings().stream()
                .filter(a -> a.question().effort().allowed(reader))
                .toList();
        List<Card.Check> all = checks(part, signs, signs.askings());
        List<Card.Check> checks =
                all.stream().filter(c -> allowed.contains(c.asking())).toList();
        return new Card(
                part,
                PartNumbers.of(file).of(id),
                words,
                level,
                reader,
                fitted,
                fitted.filter(f -> reader.covers(level))
                        .map(f -> cabinet.orElseThrow().reach(f)),
                fitted.flatMap(f -> LookAlike.of(f, cabinet.orElseThrow())),
                failures(part, signs, allowed),
                checks.stream().limit(MOST_CHECKS).toList(),
                Settings.of(part),
                Makings.of(file, machine, id),
                all.size() - checks.size());
    }

    /** Whoever may work on it: behind a panel never the owner. */
    private static Who level(Component part, Words words) {
        Who said = who(words.caution().who());
        boolean inside = !part.place().behind().isEmpty();
        return inside && said == Who.OWNER ? Who.TECHNICIAN : said;
    }

    static Who who(String word) {
        return switch (word) {
            case "owner" -> Who.OWNER;
            case "technician" -> Who.TECHNICIAN;
            default -> Who.ELECTRICIAN;
        };
    }

    private List<Card.Failure> failures(Component part, Signs signs, List<Asking> allowed) {
        List<Candidate> own = casework.candidates().stream()
                .filter(c -> c.component().filter(part.id()::equals).isPresent())
                .sorted(Comparator.comparingDouble((Candidate c) -> -c.cause().weight()))
                .toList();
        double sum = own.stream().mapToDouble(c -> c.cause().weight()).sum();
        List<Card.Failure> failures = new ArrayList<>();
        for (Candidate c : own) {
            // what an owner would notice comes first, whoever reads the card: it is what the telephone brings
            List<Card.Notice> notices = signs.notices(c.cause().id(), owners(allowed), WORTH);
            if (notices.isEmpty()) {
                notices = signs.notices(c.cause().id(), allowed, WORTH);
            }
            failures.add(new Card.Failure(
                    c.fault().orElseThrow().name(),
                    c.words().orElseThrow(),
                    c.cause().weight() / sum,
                    oncePerThing(notices).stream().limit(MOST_NOTICES).toList()));
        }
        return failures;
    }

    /** The same reading at another group tells no more. */
    private static List<Card.Notice> oncePerThing(List<Card.Notice> notices) {
        Set<String> seen = new HashSet<>();
        return notices.stream().filter(n -> seen.add(thing(n.asking()))).toList();
    }

    /** A reading without the group it is taken at. */
    private static String thing(Asking asking) {
        return asking.procedure().says().replaceFirst(" \\([^)]*\\)$", "");
    }

    private static List<Asking> owners(List<Asking> askings) {
        return askings.stream()
                .filter(a -> a.question().effort().allowed(Who.OWNER))
                .toList();
    }

    /** What reads the part itself, then what tells its failures best; the least demanding first. */
    private List<Card.Check> checks(Component part, Signs signs, List<Asking> askings) {
        Map<Asking, Double> telling = new LinkedHashMap<>();
        for (Candidate c : casework.candidates()) {
            if (c.component().filter(part.id()::equals).isPresent()) {
                signs.notices(c.cause().id(), askings, WORTH).stream()
                        .limit(2)
                        .forEach(n -> telling.merge(
                                n.asking(), n.clearness() * c.cause().weight(), Double::sum));
            }
        }
        Predicate<Asking> direct = a -> reads(a.procedure(), part);
        List<Asking> order = new ArrayList<>(askings.stream().filter(direct).toList());
        Set<String> things = new HashSet<>();
        telling.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(Map.Entry::getKey)
                .filter(direct.negate())
                .filter(a -> things.add(thing(a)))
                .forEach(order::add);
        return order.stream()
                .map(a -> new Card.Check(a, signs.whole(a), direct.test(a), minutes(a)))
                .toList();
    }

    private double minutes(Asking asking) {
        double panels = installed.machine().identity().panels().stream()
                .filter(p -> asking.question().effort().panels().contains(p.id()))
                .mapToDouble(Machine.Panel::minutes)
                .sum();
        return asking.question().effort().minutes() + panels;
    }

    private boolean reads(Procedure p, Component part) {
        Names names = new Names(installed.machine());
        List<String> read = new ArrayList<>(p.reading().ohmsBetween());
        p.reading().channel().ifPresent(read::add);
        return read.stream()
                .filter(r -> r.contains("."))
                .map(r -> names.component(r.substring(0, r.lastIndexOf('.'))))
                .anyMatch(c -> c.filter(found -> found.id().equals(part.id())).isPresent());
    }
}
