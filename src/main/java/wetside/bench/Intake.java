package wetside.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.shop.Owner;
import wetside.shop.RegisteredMachine;
import wetside.shop.Words;

/**
 * A job about to be taken in, as far as it has been typed.
 *
 * @param typed   fields as typed
 * @param known   the machine, when it is on the register
 * @param maybe   machines that what is typed may mean
 * @param signs   what the owner may mean, those kept first
 * @param when    states in which that is seen
 * @param say     what is safe to say at once, "" for nothing
 * @param files   every making of every machine, to enter a new one; empty until one was typed that nobody knows
 * @param trouble why it could not be saved, "" when it was not tried
 */
public record Intake(
        Typed typed,
        Optional<Known> known,
        List<Known> maybe,
        List<Chip> signs,
        List<Chip> when,
        String say,
        Map<String, List<Making>> files,
        String trouble) {
    private static final int SUGGESTED = 5;
    /** Typing does not wait for the twin. */
    private static final Duration PATIENCE = Duration.ofMillis(150);

    private static Map<String, List<Making>> makings;

    /** What can be typed; nothing is ever null. */
    public record Typed(
            String who,
            String complaint,
            List<String> signs,
            String when,
            String making,
            String fed,
            String owner,
            String phone,
            String person) {}

    /** A machine on the register. */
    public record Known(String serial, String title, String owner, String place, int jobs) {}

    /** Something to keep or leave. */
    public record Chip(String value, String words, boolean kept) {}

    /** A revision of a machine, and for which supply. */
    public record Making(String value, String words) {}

    static Intake of(Workshop w, Typed typed, String trouble) {
        Optional<RegisteredMachine> machine = machine(w, typed.who());
        List<Known> maybe = machine.isPresent() ? List.of() : maybe(w, typed.who());
        Optional<Casework> casework = machine.or(() -> fromMaking(typed)).flatMap(m -> JobView.casework(w, m));
        List<Signs.Sign> found = casework.map(c -> new Signs(c).of(typed.complaint(), typed.when(), SUGGESTED))
                .orElse(List.of());
        List<Chip> when = new ArrayList<>();
        casework.ifPresent(c -> Signs.when(c, new Signs(c).of(typed.complaint(), "", 4 * SUGGESTED), SUGGESTED)
                .forEach(name -> when.add(
                        new Chip(name, Wording.capital(c.routines().get(name).says()), name.equals(typed.when())))));
        return new Intake(
                typed,
                machine.map(m -> known(w, m)),
                maybe,
                chips(typed, found),
                when,
                say(w, machine, typed, casework, found),
                machine.isPresent() || typed.who().length() < 2 ? Map.of() : makings(),
                trouble);
    }

    private static String say(
            Workshop w,
            Optional<RegisteredMachine> machine,
            Typed typed,
            Optional<Casework> casework,
            List<Signs.Sign> found) {
        List<Asking> meant = typed.signs().stream()
                .flatMap(s -> casework.flatMap(c -> c.asking(s)).stream())
                .toList();
        List<Asking> likely = found.stream().limit(1).map(Signs.Sign::asking).toList();
        var expected = machine.map(m -> w.models().expected(m, PATIENCE)).orElse(Map.of());
        return SayNow.of(typed.complaint(), meant.isEmpty() ? likely : meant, expected)
                .orElse("");
    }

    private static List<Chip> chips(Typed typed, List<Signs.Sign> found) {
        List<Chip> chips = new ArrayList<>();
        typed.signs().forEach(s -> chips.add(new Chip(s, Wording.capital(s), true)));
        found.stream()
                .map(s -> s.asking().question().id())
                .filter(id -> !typed.signs().contains(id))
                .forEach(id -> chips.add(new Chip(id, Wording.capital(id), false)));
        return chips;
    }

    /** By serial, or by the name of an owner who has one machine. */
    static Optional<RegisteredMachine> machine(Workshop w, String who) {
        if (who.isEmpty()) {
            return Optional.empty();
        }
        return w.register().bySerial(who).or(() -> {
            List<RegisteredMachine> owned = w.register()
                    .ownerCalled(who)
                    .map(o -> w.register().ofOwner(o.id()))
                    .orElse(List.of());
            return owned.size() == 1 ? Optional.of(owned.get(0)) : Optional.empty();
        });
    }

    private static List<Known> maybe(Workshop w, String who) {
        Map<String, Known> all = new LinkedHashMap<>();
        for (Words.Hit hit : who.length() < 2 ? List.<Words.Hit>of() : w.words().findThings(who, SUGGESTED)) {
            if (hit.sort().equals("machine")) {
                RegisteredMachine m = w.register().machine(Long.parseLong(hit.ref()));
                all.put(m.serial(), known(w, m));
            } else if (hit.sort().equals("owner")) {
                w.register().ofOwner(Long.parseLong(hit.ref())).forEach(m -> all.put(m.serial(), known(w, m)));
            }
        }
        return all.values().stream().limit(SUGGESTED).toList();
    }

    private static Known known(Workshop w, RegisteredMachine m) {
        Owner owner = w.register().owner(m.ownerId());
        int jobs = w.jobs().of(m.id()).size();
        return new Known(m.serial(), w.models().title(m), owner.name(), m.fedFrom(), jobs);
    }

    private static Optional<RegisteredMachine> fromMaking(Typed typed) {
        String[] m = typed.making().split("\\|", -1);
        return m.length != 3
                ? Optional.empty()
                : Optional.of(new RegisteredMachine(
                        0, "", m[0], m[1], m[2], 0, typed.fed(), null, null, null, null, null, "", "", 0));
    }

    private static synchronized Map<String, List<Making>> makings() {
        if (makings == null) {
            Map<String, List<Making>> all = new LinkedHashMap<>();
            for (String name : MachineFile.names()) {
                MachineFile file = MachineFile.find(name, Kinds.declarations());
                List<Making> of = new ArrayList<>();
                List<String> supplies = file.supplyNames().isEmpty() ? List.of("") : file.supplyNames();
                for (MachineFile.Revision r : file.revisions()) {
                    supplies.forEach(s -> of.add(new Making(
                            name + "|" + r.name() + "|" + s,
                            "revision " + r.name() + ", from " + r.from() + (s.isEmpty() ? "" : ", " + s))));
                }
                all.put(file.newest().identity().title(), of);
            }
            makings = all;
        }
        return makings;
    }

    /** "first time here", "3 jobs before". */
    public static String before(Known known) {
        return known.jobs() == 0
                ? "first time here"
                : known.jobs() + (known.jobs() == 1 ? " job before" : " jobs before");
    }
}
