package wetside.tour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Wording;

/** What is said of each part on one walk: the words of its kind, another sentence for each part of the kind, and none twice. */
final class KindWords {
    private final Follow follow;
    private final Machine machine;
    private final Naming naming;
    private final Map<String, List<Component>> met = new HashMap<>();
    private final Map<List<String>, Integer> used = new HashMap<>();
    private final Set<String> said = new HashSet<>();

    KindWords(Follow follow, Machine machine, Naming naming) {
        this.follow = follow;
        this.machine = machine;
        this.naming = naming;
    }

    /**
     * @param from         what one came from, or null
     * @param next         what one comes to from here
     * @param partlyFilled steam stands above its water
     */
    record Around(Component from, List<Component> next, boolean partlyFilled) {
        /** A walk begins here although there is no room for steam. */
        boolean full() {
            return from == null && !partlyFilled;
        }
    }

    /** @param does what the part does here, {@code noticed} what one would notice if it failed */
    record Said(String does, String noticed) {}

    Said of(Component c, Around around) {
        List<Component> before = met.computeIfAbsent(c.kind().name(), k -> new ArrayList<>());
        Words words = Words.of(c.kind().name());
        String does = does(c, words, around, before);
        String noticed = noticed(c, words, around, before);
        before.add(c);
        return new Said(does, noticed);
    }

    private String does(Component c, Words words, Around around, List<Component> before) {
        List<String> sentences = sentences(words, around);
        int told = used.merge(sentences, 1, Integer::sum) - 1;
        if (told < sentences.size()) {
            return fresh(filled(sentences.get(told), c, around), before, around);
        }
        return fresh(Wording.capital("it " + words.whatFor() + "."), before, around);
    }

    private List<String> sentences(Words words, Around around) {
        Words.OnTour tour = words.tour();
        List<String> special = switch (follow) {
            case WATER -> around.partlyFilled() ? tour.partly() : around.next().size() == 1 ? tour.joins() : List.of();
            case STEAM -> around.full() ? tour.turns() : tour.steam();
            case DRAIN -> tour.drain();
            case CURRENT -> tour.current();
        };
        return special.isEmpty() ? tour.does() : special;
    }

    /** Said already of another part: then that one is named instead. */
    private String fresh(String sentence, List<Component> before, Around around) {
        if (said.add(sentence) || before.isEmpty()) {
            return sentence;
        }
        String first = naming.the(before.get(before.size() - 1));
        String other = around.next().isEmpty()
                ? "It does here what " + first + " does there."
                : "It does for " + naming.all(around.next()) + " what " + first + " does elsewhere.";
        return other;
    }

    private String noticed(Component c, Words words, Around around, List<Component> before) {
        List<String> own = words.tour().noticed();
        if (before.size() < own.size()) {
            String sentence = filled(own.get(before.size()), c, around);
            if (said.add(sentence)) {
                return sentence;
            }
        }
        for (Words.OfFault fault : words.faults().values()) {
            String sentence = "It shows like this: " + fault.owner() + ".";
            if (own.isEmpty() && said.add(sentence)) {
                return sentence;
            }
        }
        return before.isEmpty() ? "" : "It fails as " + naming.the(before.get(before.size() - 1)) + " does.";
    }

    private String filled(String sentence, Component c, Around around) {
        String from = around.from() == null ? "what is before it" : naming.the(around.from());
        String next = around.next().isEmpty() ? "what follows" : naming.all(around.next());
        String on = fastenedTo(c).isEmpty() ? "what it guards" : naming.all(fastenedTo(c));
        return Wording.capital(
                sentence.replace("{from}", from).replace("{next}", next).replace("{on}", on));
    }

    /** Parts it has a heat contact with; if none, those that move it or are moved by it. */
    private List<Component> fastenedTo(Component c) {
        return touched(c).isEmpty() ? partners(machine.joins().linkages(), c) : touched(c);
    }

    /** Parts it has a heat contact with. */
    private List<Component> touched(Component c) {
        return partners(machine.joins().contacts(), c);
    }

    private List<Component> partners(List<Machine.Join> joins, Component c) {
        return joins.stream()
                .filter(j -> j.from().component().equals(c.id())
                        || j.to().component().equals(c.id()))
                .map(j -> j.from().component().equals(c.id()) ? j.to() : j.from())
                .map(e -> machine.component(e.component()))
                .distinct()
                .toList();
    }

    private static boolean isWet(Component c) {
        return c.kind().ports().stream().anyMatch(p -> p.medium() == Medium.FLUID);
    }

    /** What is fastened in or on a wet part, and what moves it or is moved by it; empty on other walks. */
    String around(Component c) {
        if (follow != Follow.WATER) {
            return "";
        }
        List<String> sentences = new ArrayList<>();
        List<Component> warm = touched(c).stream().filter(o -> !isWet(o)).toList();
        if (!warm.isEmpty()) {
            sentences.add("Fastened to it: " + naming.all(warm) + ".");
        }
        List<Component> linked = partners(machine.joins().linkages(), c);
        if (!linked.isEmpty()) {
            sentences.add("It works together with " + naming.all(linked) + ".");
        }
        return String.join(" ", sentences);
    }
}
