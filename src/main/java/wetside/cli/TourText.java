package wetside.cli;

import java.util.Locale;
import wetside.diagnosis.Who;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.tour.Tour;
import wetside.tour.TourSheet;

/** A walk as text: stops with their numbers, side ways set in. */
final class TourText {
    private static final int INDENT = 4;

    private final Console console;

    TourText(Console console) {
        this.console = console;
    }

    void print(Tour tour) {
        console.line("");
        console.line(tour.follow().title());
        Block.Caution caution = TourSheet.caution(tour.follow());
        Who who = People.of(caution.level().style(), Who.OWNER);
        console.text("  " + People.mark(who) + " ", caution.rule() + ". " + caution.how());
        if (tour.chapters().isEmpty()) {
            console.line("");
            console.text("", TourSheet.nothing(tour.follow()));
        }
        for (Tour.Chapter chapter : tour.chapters()) {
            if (!chapter.title().isEmpty()) {
                console.line("");
                console.line(chapter.title());
            }
            chapter.steps().forEach(this::step);
        }
    }

    private void step(Tour.Step step) {
        String in = " ".repeat(INDENT * step.depth());
        console.line("");
        if (step instanceof Tour.Stop s) {
            String number = s.number() == 0 ? "" : String.valueOf(s.number());
            String place = s.place().isEmpty() ? "" : ": " + s.place();
            console.text(in + String.format(Locale.ROOT, "%3s  ", number), Wording.capital(s.name()) + place);
            console.text(in + "     ", TourSheet.said(s));
        } else {
            console.text(in, ((Tour.Turn) step).words());
        }
    }
}
