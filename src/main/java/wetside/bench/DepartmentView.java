package wetside.bench;

import java.util.List;
import wetside.department.Counted;

/**
 * What fails how often on one model, how its jobs go, and which jobs say so.
 *
 * @param models   with jobs that are done
 * @param file     the model shown, "" for none
 * @param lead     how much the rates stand on
 * @param fails    trusted markup of our own, "" where nothing can be drawn
 * @param rest     what is not drawn, together
 * @param goes     trusted markup of our own
 * @param times    time to the finding, and minutes booked
 * @param table    all of it in numbers
 * @param byTime   whether rates by time are known
 * @param time     what those stand on
 * @param undated  machines nobody has said of when they were bought
 * @param jobs     of this page, those closed last first
 * @param next     the page after this, 0 for none
 * @param trouble  why something was not saved, "" for nothing
 */
public record DepartmentView(
        List<Chip> models,
        String file,
        String title,
        String lead,
        Drawing fails,
        String rest,
        Drawing goes,
        List<FaultView.Fact> times,
        List<Line> table,
        boolean byTime,
        String time,
        List<Undated> undated,
        List<Row> jobs,
        int page,
        int next,
        String person,
        String trouble) {
    /** Where the jobs that count are as a file. */
    public String save() {
        return FaultCase.linked("/department/jobs.yaml", List.of(new FaultCase.Field("machine", file)));
    }

    public String link(int page) {
        return FaultCase.linked(
                "/department",
                List.of(new FaultCase.Field("machine", file), new FaultCase.Field("page", Integer.toString(page))));
    }

    /** A model that can be shown. */
    public record Chip(String name, String link, String jobs, boolean here) {}

    /** The same for a desk and for a telephone. */
    public record Drawing(String wide, String narrow) {
        static final Drawing NONE = new Drawing("", "");

        public boolean isEmpty() {
            return wide.isEmpty();
        }
    }

    /** A cause in numbers. */
    public record Line(String cause, String shipped, String now, String range, String jobs, String perTime) {}

    /** A machine without a date of purchase. */
    public record Undated(long id, String serial) {}

    /** @param weight how much it counts now, of 1 */
    public record Row(Counted job, String finding, String closed, String weight, double percent) {
        public String sign() {
            return switch (job.by()) {
                case PROOF -> "✓";
                case BELIEF -> "◐";
                case WORD -> "○";
                case LEFT_OUT -> "–";
            };
        }

        public boolean leftOut() {
            return job.by() == Counted.By.LEFT_OUT;
        }
    }
}
