package wetside.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetSheet;
import wetside.cabinet.Fitted;
import wetside.cabinet.View;
import wetside.machine.Machine;
import wetside.machine.Side;

/** A cabinet in words: what each panel hides and how its parts are reached. */
final class CabinetText {
    private final Cabinet cabinet;
    private final Console console;

    CabinetText(Cabinet cabinet, Console console) {
        this.cabinet = cabinet;
        this.console = console;
    }

    void print(List<Side> sides, Optional<Fitted> chosen) {
        Machine.Identity identity = cabinet.machine().identity();
        console.line(identity.title() + ", " + identity.making());
        console.line(String.format(
                Locale.ROOT,
                "Case %.0f mm wide, %.0f mm deep, %.0f mm high.",
                1000 * cabinet.size().width(),
                1000 * cabinet.size().depth(),
                1000 * cabinet.size().height()));
        if (chosen.isPresent()) {
            one(chosen.get());
            return;
        }
        if (sides.size() > 1) {
            parts("Reached from outside", cabinet.open());
            identity.panels().forEach(this::panel);
        } else {
            sides.forEach(this::seen);
        }
    }

    private void panel(Machine.Panel panel) {
        List<Fitted> hidden = cabinet.hiddenBy(panel);
        String head = String.format(
                Locale.ROOT,
                "Behind the %s (%.0f min off and on; %s)",
                panel.name(),
                panel.minutes(),
                panel.caution().isEmpty() ? "no caution given" : panel.caution());
        parts(head, hidden);
        List<String> somewhere = cabinet.somewhereBehind(panel);
        if (!somewhere.isEmpty()) {
            console.text("  no place (\"at\") in the machine file: ", String.join(", ", somewhere));
        }
    }

    private void parts(String head, List<Fitted> parts) {
        console.line("");
        console.text("", head + (parts.isEmpty() ? ": nothing" : ""));
        cabinet.ways(parts).forEach((way, there) -> {
            console.text("  ", way + ":");
            console.text("      ", CabinetSheet.named(there));
        });
    }

    private void one(Fitted p) {
        console.line("");
        console.text("", p.number() + " " + p.name() + ": " + cabinet.reach(p).words());
        console.text("  ", "best seen from the " + cabinet.best(p).word());
        if (!p.component().place().mark().isEmpty()) {
            console.text("  ", "know it: " + p.component().place().mark());
        }
    }

    private void seen(Side side) {
        View view = cabinet.from(side);
        console.line("");
        console.text("", "From the " + side.word() + ", the nearest first:");
        Table table = new Table("rlll").most(1, 38);
        List<View.Seen> parts = view.parts();
        for (int i = parts.size() - 1; i >= 0; i--) {
            View.Seen s = parts.get(i);
            if (s.manner() == View.Manner.PLAIN || s.manner() == View.Manner.BEHIND) {
                table.row(
                        String.valueOf(s.part().number()),
                        s.part().name(),
                        s.manner() == View.Manner.BEHIND ? "behind others" : "",
                        cabinet.reach(s.part()).words());
            }
        }
        table.print(console, "  ");
    }
}
