package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.cabinet.CabinetSheet;
import wetside.cabinet.Fitted;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Side;
import wetside.machine.Wording;
import wetside.page.HtmlSheet;
import wetside.page.PdfSheet;

/** Where parts sit, what panels hide, how parts are reached. */
@Command(
        name = "cabinet",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description =
                "Where the parts sit in the case: what each panel hides, how each part is reached, views from five sides.")
final class CabinetCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

    @Mixin
    private MachineChoice choice;

    @Option(
            names = "--from",
            paramLabel = "SIDE",
            description = "rear, right, left, top, front or bottom; all if not said")
    private String from;

    @Option(names = "--part", paramLabel = "ID", description = "the part to point out")
    private String part;

    @Option(names = "--svg", paramLabel = "FILE", description = "write the drawing to a file")
    private String svg;

    @Mixin
    private PaperChoice papers;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    CabinetCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        MachineFile file = MachineFile.find(name, Kinds.declarations());
        Machine machine = choice.installed(name).machine();
        Cabinet cabinet = Cabinet.of(file, machine)
                .orElseThrow(() -> new BadArgument("the machine file gives no measures of the case: write case: {width:"
                        + " ..., depth: ..., height: ...}"));
        Optional<Fitted> chosen = Optional.ofNullable(part).map(id -> fitted(cabinet, id));
        List<Side> sides = from == null ? cabinet.sides() : List.of(side(from));
        Written written = papers.written(console, svg);
        if (json) {
            console.result(Json.print(json(cabinet)));
        } else if (written.isEmpty()) {
            new CabinetText(cabinet, console).print(sides, chosen);
        }
        written.svg(() -> new CabinetDrawing(cabinet, chosen, Set.of(), CabinetDrawing.Room.SCREEN).svg(sides));
        written.html(() -> HtmlSheet.of(new CabinetSheet(cabinet, chosen).sheet(sides)));
        written.pdf(() -> PdfSheet.of(new CabinetSheet(cabinet, chosen).sheet(sides)));
        written.told(json);
        return 0;
    }

    private static Side side(String word) {
        return Side.of(word)
                .orElseThrow(() -> new BadArgument("--from is "
                        + Wording.inWords(Side.words()).replace(" and ", " or ") + ", not '" + word + "'"));
    }

    static Fitted fitted(Cabinet cabinet, String id) {
        Machine machine = cabinet.machine();
        if (machine.has(id) && cabinet.part(id).isEmpty()) {
            throw new BadArgument("\"" + id + "\" has no place in the case (no \"at\" in the machine file)");
        }
        return cabinet.part(id)
                .or(() -> machine.inRole(id).flatMap(c -> cabinet.part(c.id())))
                .orElseThrow(() -> {
                    List<String> ids = cabinet.parts().stream().map(Fitted::id).toList();
                    String near = Wording.nearest(id, ids);
                    return new BadArgument("no part \"" + id + "\""
                            + (near.isEmpty() ? "; there are " + Wording.inWords(ids) : ". Maybe " + near + "."));
                });
    }

    private static Map<String, Object> json(Cabinet cabinet) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("machine", cabinet.machine().identity().title());
        m.put("revision", cabinet.machine().identity().revision());
        m.put(
                "case",
                List.of(
                        cabinet.size().width(),
                        cabinet.size().depth(),
                        cabinet.size().height()));
        List<Map<String, Object>> parts = new ArrayList<>();
        for (Fitted p : cabinet.parts()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("number", p.number());
            one.put("component", p.id());
            one.put("name", p.name());
            one.put("low", p.body().low().stream().map(Json::number).toList());
            one.put("high", p.body().high().stream().map(Json::number).toList());
            one.put("behind", p.component().place().behind());
            one.put("reach", cabinet.reach(p).steps());
            one.put("shownFrom", cabinet.best(p).word());
            parts.add(one);
        }
        m.put("parts", parts);
        return m;
    }
}
