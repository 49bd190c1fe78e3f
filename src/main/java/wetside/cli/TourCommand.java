package wetside.cli;

import java.util.ArrayList;
import java.util.HashSet;
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
import wetside.casework.Installed;
import wetside.drawing.PartNumbers;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;
import wetside.map.Layer;
import wetside.map.MachineMap;
import wetside.page.HtmlSheet;
import wetside.page.PdfSheet;
import wetside.page.Sheet;
import wetside.tour.Follow;
import wetside.tour.Pictures;
import wetside.tour.Telling;
import wetside.tour.Tour;
import wetside.tour.TourSheet;

/** Walks through a machine in the order things flow. */
@Command(
        name = "tour",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description =
                "A walk through the machine in the order things flow: each part, where it is, what it does there and"
                        + " what one would notice if it failed.")
final class TourCommand implements Callable<Integer> {
    private static final String ALL = "all";

    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

    @Option(
            names = "--follow",
            paramLabel = "WHAT",
            description = "water (if not said), steam, drain, current or all of them")
    private String follow = Follow.WATER.word();

    @Mixin
    private MachineChoice choice;

    @Mixin
    private PaperChoice papers;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    TourCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Follow> wanted = wanted();
        MachineFile file = MachineFile.find(name, Kinds.declarations());
        Installed installed = choice.installed(name);
        Written written = papers.written(console);
        PartNumbers numbers = PartNumbers.of(file);
        List<Tour> tours = wanted.stream()
                .map(f -> Telling.of(f, installed.machine(), numbers, installed.feed()))
                .toList();
        if (written.wantsSheet()) {
            Sheet sheet = sheet(tours, installed, file);
            written.html(() -> HtmlSheet.of(sheet));
            written.pdf(() -> PdfSheet.of(sheet));
            written.told(false);
        } else if (json) {
            console.result(Json.print(json(tours, installed)));
        } else {
            console.line(FindingText.heading(installed));
            tours.forEach(t -> new TourText(console).print(t));
        }
        return 0;
    }

    private List<Follow> wanted() {
        if (follow.equals(ALL)) {
            return List.of(Follow.values());
        }
        int i = Follow.words().indexOf(follow);
        if (i < 0) {
            throw new BadArgument("--follow is water, steam, drain, current or all, not '" + follow + "'");
        }
        return List.of(Follow.values()[i]);
    }

    private static Sheet sheet(List<Tour> tours, Installed installed, MachineFile file) {
        Optional<Cabinet> cabinet = Cabinet.of(file, installed.machine());
        PartNumbers numbers = PartNumbers.of(file);
        Set<Set<Layer>> shown = new HashSet<>();
        List<TourSheet.Walk> walks = new ArrayList<>();
        for (Tour tour : tours) {
            Set<Layer> layers = tour.follow() == Follow.CURRENT ? MachineMap.WIRED : MachineMap.WET;
            MachineMap map = MachineMap.of(installed.machine(), numbers, layers);
            String title = tour.follow() == Follow.CURRENT ? "Map of wires" : "Map of pipes";
            boolean first = !tour.stops().isEmpty() && !map.isEmpty() && shown.add(layers);
            walks.add(
                    new TourSheet.Walk(tour, Pictures.of(tour, cabinet), first ? MapPages.between(map, title) : null));
        }
        return TourSheet.of(walks, "", Plates.of(installed));
    }

    private static Map<String, Object> json(List<Tour> tours, Installed installed) {
        Map<String, Object> m = Json.machine(installed);
        List<Map<String, Object>> walks = new ArrayList<>();
        for (Tour tour : tours) {
            Map<String, Object> walk = new LinkedHashMap<>();
            walk.put("follow", tour.follow().word());
            walk.put(
                    "chapters",
                    tour.chapters().stream().map(TourCommand::chapter).toList());
            walks.add(walk);
        }
        m.put("walks", walks);
        return m;
    }

    private static Map<String, Object> chapter(Tour.Chapter chapter) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("title", chapter.title());
        m.put("steps", chapter.steps().stream().map(TourCommand::step).toList());
        return m;
    }

    private static Map<String, Object> step(Tour.Step step) {
        Map<String, Object> m = new LinkedHashMap<>();
        if (step instanceof Tour.Stop s) {
            m.put("component", s.component());
            m.put("number", s.number());
            m.put("name", s.name());
            m.put("place", s.place());
            m.put("does", s.does());
            m.put("noticed", s.noticed());
        } else {
            m.put("says", ((Tour.Turn) step).words());
        }
        m.put("depth", step.depth());
        return m;
    }
}
