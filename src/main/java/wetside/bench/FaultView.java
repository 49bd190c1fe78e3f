package wetside.bench;

import java.util.List;
import wetside.page.Level;

/**
 * The page of fault finding: what is known, the next step, the causes.
 *
 * @param people who may be on the line
 * @param known  what is known, with how much it told
 * @param stop   what an owner is told before all else, whose machine is not to be tried; null when there is no such thing
 * @param step   what to do next; null while nothing has been computed, or nothing is to be tried
 * @param causes null while nothing has been computed
 * @param card   the finding, null while the causes are open
 * @param odd    what none of the causes explains, null when one explains all
 * @param normal what this machine read when it was well, null when nothing is kept
 * @param why    reasons for or against a cause somebody asked about, in the place of the step; else null
 * @param rest   the causes that are not named, in the place of the step, when somebody asked; else null
 * @param sharp  how far the signatures are
 * @param seen   what can be added out of turn
 * @param person who is at the screen
 * @param rates  whose rates the causes begin with
 */
public record FaultView(
        FaultCase about,
        List<Person> people,
        List<Known> known,
        Caution stop,
        Step step,
        Causes causes,
        Card card,
        Odd odd,
        Normal normal,
        Why why,
        Rest rest,
        Sharp sharp,
        List<Seen> seen,
        String refused,
        String person,
        Rates rates) {
    /**
     * @param choice whether there are jobs to use or to leave aside
     * @param on     whether they are used
     */
    public record Rates(String words, boolean choice, boolean on) {}

    /** Where a machine stands that nobody has brought, as fields to fill in. */
    public record Place(String machine, List<PlaceField> fields) {}

    /**
     * @param like    an example of what to write
     * @param options to choose from; empty for one that is written
     */
    public record PlaceField(String field, String words, String value, String like, List<String> options) {}

    /** Who may be on the line. */
    public record Person(Level level, String word, String shortWord, String link, boolean here) {}

    /** @param told how much it told: much, some, little, nothing */
    public record Known(String asked, String question, String answer, String told, String link, boolean unknown) {}

    /** A line with a mark before it. */
    public record Line(String mark, String words, String strength) {}

    /**
     * @param sort    ask, repair or call
     * @param say     to be said aloud to the owner, "" for others
     * @param expect  null where nothing is read
     * @param another link to the next best step
     * @param others  further steps, by what they promise
     */
    public record Step(
            String sort,
            String asked,
            String title,
            Level level,
            List<String> cost,
            String say,
            List<String> how,
            Caution caution,
            Expect expect,
            Pad pad,
            String why,
            List<Line> leaves,
            Where where,
            String another,
            List<Seen> others,
            boolean change) {}

    /** Where it is, drawn from the cabinet. */
    public record Where(String svg, String caption) {}

    public record Caution(Level level, String rule, String how) {}

    /**
     * What should be read, as rails or as shares.
     *
     * @param wide  rails with names left, "" for shares
     * @param rows  shares by option
     * @param would what the typed answer would leave, "" while nothing is typed
     */
    public record Expect(
            String title, String wide, String narrow, List<String> options, List<Shares> rows, String would) {}

    /** @param cells per option: how many of a hundred, and whether it is the strongest of its row */
    public record Shares(String name, boolean strong, List<Cell> cells) {}

    public record Cell(long percent, boolean strongest) {}

    /** The field a number is typed into. */
    public record Pad(String unit, String value, String step, String start, String instrument) {}

    /**
     * @param pairs what was thought of two causes at once, "" for nothing
     */
    public record Causes(
            List<Group> groups, String others, String othersShare, String spent, String toGo, String pairs) {}

    /** Causes that nothing open parts, or one alone. */
    public record Group(boolean bracket, String together, String sentence, List<Cause> causes, List<Line> reasons) {}

    /**
     * @param why   link to its reasons
     * @param parts of two causes at once, each with its repair; empty for one
     */
    public record Cause(
            String name,
            String share,
            String range,
            double percent,
            double low,
            double high,
            String why,
            List<Part> parts) {}

    /** One of two causes at once. */
    public record Part(String name, String repair, Level level, String minutes) {}

    /**
     * Nothing explains it.
     *
     * @param lines   the odd readings
     * @param offer   two causes at once have not been thought of yet
     * @param running they are being run
     * @param words   how far that is, or what came of it
     */
    public record Odd(List<OddReading> lines, boolean offer, boolean running, String words, long percent) {}

    /** @param link to read it again, "" for a repair */
    public record OddReading(String words, String name, String link) {}

    /**
     * What this machine read when it was well.
     *
     * @param used   it narrows the tolerances now
     * @param toggle link to leave it out, or to use it again
     */
    public record Normal(String words, boolean used, List<Line> readings, String toggle) {}

    /**
     * Reasons for or against one cause.
     *
     * @param says    the reading that decided, or what is left when none did
     * @param reasons one for every answer that speaks, the loudest first
     * @param silent  answers that say nothing of it, in words; "" for none
     * @param parting what would part it from the likeliest, null when it is the likeliest or nothing would
     */
    public record Why(String title, String share, String says, List<Reason> reasons, String silent, Parting parting) {}

    /** @param expect what it should have read, null where nothing is expected */
    public record Reason(String mark, String words, String strength, Expect expect) {}

    /** @param link "" when it is not for this person */
    public record Parting(String says, String words, String link, Level level, String minutes) {}

    /** The causes that are not named. */
    public record Rest(String title, List<Unlikely> causes) {}

    /** @param says the reading that speaks most against it */
    public record Unlikely(String name, String share, String says, String why) {}

    /** The finding. */
    public record Card(
            String title,
            String share,
            String says,
            String owner,
            List<Fact> facts,
            Caution caution,
            List<String> prove,
            boolean saved,
            String cause) {}

    public record Fact(String name, String words) {}

    /**
     * @param token   changes whenever the page would
     * @param first   not all causes have been run yet
     * @param paused  somebody goes on with what is there
     * @param percent done of what is wanted
     */
    public record Sharp(boolean ready, String token, boolean first, boolean paused, String words, long percent) {}

    /** A step that can be chosen. */
    public record Seen(String words, String link, Level level, String detail) {}
}
