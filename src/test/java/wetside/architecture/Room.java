package wetside.architecture;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The packages of Wetside, each with the packages it may use and the reason why no others. */
enum Room {
    UNITS("quantities are for the edges and know nothing of what is measured", ""),
    PHYSICS("a law of nature holds, and is checked, without any machine", "units"),
    WATER("chemistry holds for any water, in a machine or in a glass", "units"),
    MACHINE("what a machine file says can be read, checked and drawn without any physics", "units"),
    ANALYSIS("a water is known better or worse whatever it runs through", "units water machine"),
    BLUEPRINT(
            "its words serve every kind, so it knows none; from a machine it takes only what is joined",
            "units physics machine"),
    KIND(
            "a kind speaks the blueprint's words; how those are solved must stay free to change",
            "units physics blueprint machine"),
    PLANT(
            "the plant must run what it has never heard of: any kind, any scenario, any cause",
            "units physics machine blueprint"),
    RUN(
            "a run is the same whoever asked for it: a person, a procedure, the diagnosis",
            "units physics blueprint machine kind plant"),
    PROCEDURE("a procedure says how to look, never what to conclude", "units physics blueprint machine kind plant run"),
    DIAGNOSIS("inference knows neither machine nor twin, so it can be held against published examples", "units"),
    CASEWORK(
            "the one place where twin and inference meet",
            "units physics water machine analysis blueprint kind plant run procedure diagnosis"),
    JUDGING(
            "judging plays whole jobs against the twin; nothing that finds faults may know it is judged",
            "units machine kind run procedure diagnosis casework"),
    FEEDWATER(
            "the one place where chemistry and twin meet",
            "units water machine analysis blueprint kind plant run procedure casework drawing page"),
    DRAWING("a picture shows a machine and a run and computes nothing of its own", "units machine kind run"),
    PAGE("a sheet of paper does not know what is on it; its colours are those of drawings", "drawing"),
    CABINET("where parts sit follows from boxes and panels, whatever the parts do", "units machine kind drawing page"),
    CARD(
            "a card gathers what others know and knows nothing itself",
            "units machine kind run procedure diagnosis casework drawing page cabinet"),
    TOUR(
            "a walk follows what the kinds have built and is told in their words; it computes nothing and prints nothing",
            "units machine blueprint kind drawing page cabinet"),
    MAP(
            "a map asks the twin what joins what and what flows, and the drawing room how to show it",
            "units machine blueprint kind plant run drawing"),
    SHOP("a workshop's data outlives every page that shows it", "units"),
    DEPARTMENT(
            "the one place where the shop's jobs and the inference meet; it knows no page",
            "units machine kind diagnosis casework shop"),
    BENCH(
            "the browser is a door like the command line: it shows what others compute and keep",
            "units physics water machine analysis blueprint kind plant run procedure diagnosis casework feedwater drawing"
                    + " page cabinet card tour map shop department"),
    CLI(
            "the command line is one of several doors, so nothing behind it may know it",
            "units physics water machine analysis blueprint kind plant run procedure diagnosis casework feedwater drawing"
                    + " page cabinet card tour map shop department bench judging");

    final String reason;
    private final List<String> mayUse;

    Room(String reason, String mayUse) {
        this.reason = reason;
        this.mayUse = Arrays.asList(mayUse.split(" "));
    }

    String folder() {
        return name().toLowerCase(Locale.ROOT);
    }

    String packages() {
        return "wetside." + folder() + "..";
    }

    String[] forbidden() {
        return Arrays.stream(values())
                .filter(room -> room != this && !mayUse.contains(room.folder()))
                .map(Room::packages)
                .toArray(String[]::new);
    }
}
