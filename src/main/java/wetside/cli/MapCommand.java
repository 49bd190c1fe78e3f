package wetside.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.Installed;
import wetside.drawing.PartNumbers;
import wetside.drawing.Theme;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.map.Layer;
import wetside.map.MachineMap;
import wetside.map.Measured;
import wetside.page.HtmlSheet;
import wetside.page.PdfSheet;
import wetside.procedure.Procedures;

/** The circuits of a machine, in words and drawn. */
@Command(
        name = "map",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "What joins what: the circuits of a machine in words, or drawn from its file, coloured by a run.")
final class MapCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

    @Mixin
    private MachineChoice choice;

    @Option(
            names = "--layers",
            split = ",",
            paramLabel = "LAYER",
            description = "water, steam, drain, current, sensing; without it one drawing of pipes and one of wires")
    private List<String> layers;

    @Option(
            names = "--colour",
            paramLabel = "pressure|temperature",
            description = "colour lines by what a run has in them")
    private String colour;

    @Option(
            names = "--scenario",
            paramLabel = "SCENARIO",
            description =
                    "the run to colour by: a routine by name, or a scenario file (default: shot, at the first group)")
    private String scenario;

    @Option(
            names = "--at",
            paramLabel = "MOMENT",
            description = "when to look: a mark of the scenario, or a time from its beginning, e.g. \"20 s\";"
                    + " its second mark, or its only one, if not said")
    private String moment;

    @Option(
            names = "--break",
            paramLabel = "COMPONENT:FAULT[=SEVERITY]",
            description = "break a part for the run; may be given again")
    private List<String> breaks = List.of();

    @Option(
            names = "--svg",
            paramLabel = "FILE",
            description = "write one drawing: the pipes, or --layers; - for the screen")
    private String svg;

    @Mixin
    private PaperChoice papers;

    @Option(names = "--dark", description = "--svg for a dark screen; a page follows the reader's own")
    private boolean dark;

    MapCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        MachineFile file = MachineFile.find(name, Kinds.declarations());
        Installed installed = choice.installed(name);
        Measured.Quantity quantity = quantity();
        Written written = papers.written(console, svg);
        PartNumbers numbers = PartNumbers.of(file);
        Measured measured = quantity == null ? null : measured(installed).by(quantity);
        List<MachineMap> maps = maps(installed.machine(), numbers, measured);
        if (written.isEmpty()) {
            outline(installed.machine(), maps);
        }
        written.svg(() -> maps.get(0).svg(dark ? Theme.DARK : Theme.LIGHT));
        written.html(() -> HtmlSheet.of(MapPages.of(installed, maps, false)));
        written.pdf(() -> PdfSheet.of(MapPages.of(installed, maps, true)));
        written.told(false);
        return 0;
    }

    /** Pipes and wires apart, because both in one picture hide each other; or what was asked for. */
    private List<MachineMap> maps(Machine machine, PartNumbers numbers, Measured measured) {
        List<Set<Layer>> wanted = layers == null ? List.of(MachineMap.WET, MachineMap.WIRED) : List.of(chosen());
        List<MachineMap> maps = wanted.stream()
                .map(l -> measured == null ? MachineMap.of(machine, numbers, l) : MachineMap.of(measured, numbers, l))
                .filter(m -> !m.isEmpty())
                .toList();
        if (maps.isEmpty()) {
            throw new BadArgument("nothing of " + machine.identity().title() + " is in these layers");
        }
        return maps;
    }

    private Set<Layer> chosen() {
        Set<Layer> set = EnumSet.noneOf(Layer.class);
        for (String word : layers) {
            if (!Layer.words().contains(word)) {
                String near = Wording.nearest(word, Layer.words());
                throw new BadArgument("--layers: no layer '" + word + "'; there are " + Wording.inWords(Layer.words())
                        + (near.isEmpty() ? "" : ". Maybe " + near + "."));
            }
            set.add(Layer.valueOf(word.toUpperCase(Locale.ROOT)));
        }
        return set;
    }

    private Measured.Quantity quantity() {
        if (colour == null) {
            if (scenario != null || moment != null || !breaks.isEmpty()) {
                throw new BadArgument("--scenario, --at and --break say what to colour by; say --colour too");
            }
            return null;
        }
        for (Measured.Quantity q : Measured.Quantity.values()) {
            if (q.word().equals(colour)) {
                return q;
            }
        }
        throw new BadArgument("--colour is pressure or temperature, not '" + colour + "'");
    }

    private Measured measured(Installed installed) {
        Machine machine = installed.machine();
        for (String b : breaks) {
            machine = Installed.broken(machine, b);
        }
        Measured measured = Measured.cold(machine);
        new Moment(moment)
                .reach(
                        measured.run(),
                        Scenarios.chain(scenario == null ? shot(machine) : scenario, machine, Procedures.bundled()));
        return measured;
    }

    /** A shot, at the first group where there are several. */
    private static String shot(Machine machine) {
        return machine.stations().stream().findFirst().map(s -> "shot, " + s).orElse("shot");
    }

    private void outline(Machine machine, List<MachineMap> maps) {
        console.line(machine.identity().title() + ", " + machine.identity().making());
        for (MachineMap map : maps) {
            map.outline().forEach((group, lines) -> {
                console.line("");
                console.line(group);
                lines.forEach(l -> console.text("  ", l));
            });
        }
    }
}
