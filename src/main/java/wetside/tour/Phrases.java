package wetside.tour;

import java.util.List;

/** What is said between stops; {here}, {next}, {side}, {main}, {all} and {count} are filled in. */
final class Phrases {
    /** Two ways, one of them to be told first. */
    static final List<String> PARTS_IN_TWO = List.of(
            "Here the way parts, to {side} and to {main}. The short way first.",
            "Two ways lead on: one to {side}, which we take first, the other to {main}.",
            "From {here} it can go to {side} or to {main}. We look at the first and come back.",
            "Again there are two ways. We go to {side} first and keep {main} for later.");
    /** Three ways or more. */
    static final List<String> PARTS_IN_MORE = List.of(
            "From {here} {count} ways lead on: to {all}. We take them one after the other.",
            "Here it spreads over {count} ways, to {all}, and we go along each in turn.");
    /** After a side way of two, for the main one. */
    static final List<String> BACK = List.of(
            "Back at {here}, the way goes on to {next}.",
            "From {here} now to {next}.",
            "We return to {here} and go on to {next}.",
            "Again from {here}: next comes {next}.");
    /** Between ways that were all named before. */
    static final List<String> NEXT = List.of(
            "After that comes {next}.",
            "The next of them is {next}.",
            "Then, again from {here}, {next}.",
            "From {here} on to {next}.");
    /** For the last of those. */
    static final List<String> LAST = List.of("The last of them is {next}.", "Which leaves {next}.");
    /** Into a part a second time, with one way on. */
    static final List<String> ONCE_MORE = List.of(
            "This leads into {here} a second time, and from there on to {next}.",
            "So it comes into {here} once more and leaves it towards {next}.");
    /** Before a walk that begins apart. */
    static final List<String> ANOTHER = List.of(
            "Another way begins elsewhere.",
            "And one that begins apart.",
            "There is one more.",
            "The next begins on its own.");
    /** Before another part that lets off. */
    static final List<String> LETS_OFF = List.of(
            "That is one way out; the next part lets go by itself.",
            "Another part can let go as well.",
            "There is one more way out.",
            "And one more that lets off.");
    /** A walk that begins where one has been. */
    static final List<String> BEGINS = List.of("It begins at {here}.");
    /** The same, its ways named. */
    static final List<String> ASKS = List.of(
            "From {here} thin wires lead to {next}.",
            "Other wires join {here} with {next}.",
            "{here} has wires of its own, to {next}.",
            "And {here} is wired to {next}.");
    /** Current that ends in a part known already. */
    static final List<String> SERVES = List.of(
            "From here it goes to {here} and back.", "It works {here} and returns.", "What it works is {here}.");
    /** Water that went round by itself. */
    static final List<String> RING = List.of(
            "Through it the water is back in {here}. That is a ring: it goes round by itself as long as one side is hotter than the other.",
            "So it comes back into {here}, and another ring is closed.");
    /** Back into what it came from. */
    static final List<String> RUNS_BACK = List.of(
            "From here it runs back into {here} and can start anew.", "This too ends in {here}, where it came from.");
    /** Current back where it came from. */
    static final List<String> CIRCUIT = List.of(
            "From here it goes back to {here}: the circuit is closed.",
            "And back to {here}.",
            "With {here} this circuit is closed as well.",
            "The way back ends at {here}.");
    /** Into a part another way has told of. */
    static final List<String> MEETS = List.of(
            "Here it joins the way we know, at {here}.",
            "It ends in {here}, where we have been; from there it goes the same way.",
            "So it comes to {here} as well.");
    /** One of several ways leads to what is known. */
    static final List<String> AT_ONCE = List.of(
            "One way leads to {here}, which we know; another goes on to {next}.",
            "One ends at {here}, the other goes on to {next}.");

    /** Into a part a longer way will tell of. */
    static final List<String> LATER = List.of(
            "So it comes to {here}, where a longer way will bring us as well.",
            "This ends at {here}; we come there by another way.");
    /** One of several ways does. */
    static final List<String> LATER_ON = List.of(
            "One way is short and leads to {here}, where we come later; the other goes on to {next}.",
            "It branches to {here}, which comes later, and goes on to {next}.");
    /** Current that goes through one part and back, and on to others. */
    static final List<String> WORKS_AND_GOES_ON =
            List.of("It works {here}, and goes on to {next}.", "One way works {here}; the rest goes to {next}.");

    /** One of several ways goes back where it came from. */
    static final List<String> STRAIGHT_BACK = List.of(
            "Part of it goes straight back to {here}, the rest on to {next}.",
            "Some returns at once to {here}; the rest goes to {next}.");

    private Phrases() {}
}
