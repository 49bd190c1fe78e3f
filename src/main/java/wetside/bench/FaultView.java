package wetside.bench;

import java.util.List;
import wetside.page.Level;

/**
 * The page of fault finding: what is known, the next step, the causes.
 *
 * @param people who may be on the line
 * @param known  what is known, with how much it told
 * @param step   what to do next; null while nothing has been computed
 * @param causes null while nothing has been computed
 * @param card   the finding, null while the causes are open
 * @param odd    what none of the causes explains, "" when one explains all
 * @param sharp  how far the signatures are
 * @param seen   what can be added out of turn
 * @param person who is at the screen
 * @param rates  whose rates the causes begin with
 */
public record FaultView(
        FaultCase about,
        List<Person> people,
        List<Known> known,
        Step step,
        Causes causes,
        Card card,
        List<Line> odd,
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

    public record Causes(List<Group> groups, String others, String othersShare, String spent, String toGo) {}

    /** Causes that nothing open parts, or one alone. */
    public record Group(boolean bracket, String together, String sentence, List<Cause> causes, List<Line> reasons) {}

    public record Cause(String name, String share, String range, double percent, double low, double high) {}

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

    /** @param percent done of what is wanted */
    public record Sharp(boolean ready, boolean none, int drawn, String words, long percent) {}

    /** A step that can be chosen. */
    public record Seen(String words, String link, Level level, String detail) {}
}
