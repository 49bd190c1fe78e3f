package wetside.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.card.Card;
import wetside.card.CardSheet;
import wetside.card.Cards;
import wetside.casework.Installed;
import wetside.diagnosis.Who;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.page.HtmlSheet;
import wetside.page.PdfSheet;
import wetside.page.Sheet;
import wetside.procedure.Procedures;

/** The card of one part. */
@Command(
        name = "part",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "The card of a part: what for, how to know it, how it fails, how to test it, how to get at it.")
final class PartCommand implements Callable<Integer> {
    private static final int MOST_DRAWS = 256;

    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "MACHINE",
            description = "a machine file, or the name of a machine that comes with Wetside")
    private String name;

    @Parameters(index = "1", paramLabel = "PART", description = "its id in the machine file, or its role")
    private String part;

    @Mixin
    private MachineChoice choice;

    @Option(
            names = "--who",
            paramLabel = "WHO",
            description =
                    "for whom: owner, technician (if not said) or qualified; an owner's card stays outside the case")
    private String who;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description = "machines simulated for each failure, tolerances × 1.3 (default: 8)")
    private int draws = 8;

    @Option(names = "--svg", paramLabel = "FILE", description = "write where it is, as a drawing")
    private String svg;

    @Mixin
    private PaperChoice papers;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    PartCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < 4 || draws > MOST_DRAWS) {
            throw new BadArgument("--draws is a number from 4 to " + MOST_DRAWS + ", not " + draws);
        }
        Who reader = People.of(who, Who.TECHNICIAN);
        Written written = papers.written(console, svg);
        MachineFile file = MachineFile.find(name, Kinds.declarations());
        Installed installed = choice.installed(name);
        Cards cards = new Cards(file, installed, Procedures.bundled());
        Card card = cards.card(component(installed.machine(), part).id(), reader, draws);
        if (json) {
            console.result(Json.print(CardJson.of(card, installed)));
        } else if (written.isEmpty()) {
            new CardText(card, installed, console).print();
        }
        written.svg(() -> drawing(card, cards.cabinet()));
        if (written.wantsSheet()) {
            Sheet sheet = new CardSheet(card, installed, cards.cabinet()).sheet();
            written.html(() -> HtmlSheet.of(sheet));
            written.pdf(() -> PdfSheet.of(sheet));
        }
        written.told(json);
        return 0;
    }

    private static String drawing(Card card, Optional<Cabinet> cabinet) {
        if (card.fitted().isEmpty() || cabinet.isEmpty()) {
            throw new BadArgument("--svg: \"" + card.part().id()
                    + "\" has no place in the case that this reader may look" + " at, so there is nothing to draw");
        }
        return CardSheet.drawing(card, cabinet.get(), CabinetDrawing.Room.SCREEN)
                .svg(CardSheet.sides(cabinet.get(), card.fitted().get()));
    }

    static Component component(Machine machine, String id) {
        if (machine.has(id)) {
            return machine.component(id);
        }
        return machine.inRole(id).orElseThrow(() -> {
            var ids = machine.components().stream().map(Component::id).toList();
            String near = Wording.nearest(id, ids);
            return new BadArgument("no part \"" + id + "\" on this machine"
                    + (near.isEmpty() ? "; there are " + Wording.inWords(ids) : ". Maybe " + near + "."));
        });
    }
}
