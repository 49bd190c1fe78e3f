package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every way to get a machine file wrong: the exact message, its place, and what was probably meant. */
class BadMachineFileTest {
    private static final String PRESSURE = "k.yaml:26:55: components / valve / set / opening pressure: ";

    static Stream<Arguments> values() {
        return Stream.of(
                wrong(
                        "12 bar",
                        "12 baar",
                        PRESSURE
                                + "\"12 baar\": \"baar\" is not a unit of pressure; use bar, mbar, kPa, MPa, Pa or psi."
                                + " Maybe \"12 bar\"."),
                wrong(
                        "12 bar",
                        "12",
                        PRESSURE + "\"12\" has no unit; a pressure is written in bar, mbar, kPa, MPa, Pa or psi."
                                + " Maybe \"12 bar\"."),
                wrong(
                        "12 bar",
                        "12 °C",
                        PRESSURE + "\"12 °C\" is a temperature; a pressure is wanted here (bar, mbar, kPa, MPa, Pa or"
                                + " psi)."),
                wrong(
                        "12 bar",
                        "90 bar",
                        PRESSURE + "\"90 bar\" makes no sense: opening pressure of a safety valve lies between 0.50 bar"
                                + " and 16.0 bar."),
                wrong(
                        "12 bar",
                        "-1 bar",
                        PRESSURE + "\"-1 bar\" makes no sense: opening pressure of a safety valve lies between 0.50 bar"
                                + " and 16.0 bar."),
                wrong(
                        "12 bar",
                        "12 bar ± 5 mm",
                        PRESSURE + "\"5 mm\" is a length; a pressure is wanted here (bar, mbar, kPa, MPa, Pa or psi)."),
                wrong("12 bar", "12 bar ±", PRESSURE + "\"12 bar ±\" ends where its tolerance should be."),
                wrong(
                        "12 bar",
                        "1,2 bar",
                        PRESSURE + "\"1\" has no unit; a pressure is written in bar, mbar, kPa, MPa, Pa or psi. Maybe"
                                + " \"1 bar\".",
                        "k.yaml:26:57: components / valve / set / 2 bar: a comma begins a new entry; the decimal sign"
                                + " is a point."),
                wrong("12 bar", "", PRESSURE.replace("55", "37") + "nothing is written here; a pressure is wanted."),
                wrong("12 bar", "[12 bar]", PRESSURE.replace("55", "37") + "a pressure is wanted here."),
                wrong(
                        "minutes: 1",
                        "minutes: long",
                        "k.yaml:5:34: panels / top / minutes: \"long\" is not a plain number."),
                wrong(
                        "[40 mm",
                        "[400 mm",
                        "k.yaml:16:10: components / cock / at / 1: this is outside the case, which is 300 mm wide; parts"
                                + " outside it have no \"at\"."),
                wrong(
                        "minutes: 1",
                        "sides: [top, ceiling], minutes: 1",
                        "k.yaml:5:38: panels / top / sides: \"ceiling\" is no side; there are rear, right, left, top, front"
                                + " and bottom."),
                wrong(
                        "kind: safety valve,",
                        "kind: safety valve, at: [5 mm, 5 cm, 5 cm],",
                        "k.yaml:26:36: components / valve / at / 1: this safety valve is 20 mm wide and would stick out"
                                + " of the case: \"at\" is its middle and lies between 10 mm and 290 mm here, or say a"
                                + " smaller \"size\"."),
                wrong(
                        "at: [40 mm, 10 mm,",
                        "size: [80 mm, 60 mm]\n    at: [40 mm, 10 mm,",
                        "k.yaml:16:5: components / cock / size: a size is three lengths: width, depth, height."),
                wrong(
                        "[40 mm, ",
                        "[",
                        "k.yaml:16:5: components / cock / at: a place is three lengths: from the left, from the rear,"
                                + " from the bottom of the case."));
    }

    static Stream<Arguments> names() {
        return Stream.of(
                wrong(
                        "kind: safety valve",
                        "kind: safty valve",
                        "k.yaml:26:17: components / valve / kind: there is no kind \"safty valve\". Maybe \"safety"
                                + " valve\"."),
                wrong(
                        "kind: safety valve",
                        "kind: toaster",
                        "k.yaml:26:17: components / valve / kind: there is no kind \"toaster\"; there are water mains,"
                                + " mains cock, tee, flooded boiler, safety valve, socket, heating element and"
                                + " surroundings."),
                wrong(
                        "opening pressure",
                        "opening presure",
                        "k.yaml:26:3: components / valve: a safety valve needs \"opening pressure\" in its set (a"
                                + " pressure: it lifts at).",
                        "k.yaml:26:37: components / valve / set / opening presure: a safety valve has no \"opening"
                                + " presure\"; it has opening pressure. Maybe \"opening pressure\"."),
                wrong(
                        ", set: {opening pressure: 12 bar}",
                        "",
                        "k.yaml:26:3: components / valve: a safety valve needs \"opening pressure\" in its set (a"
                                + " pressure: it lifts at)."),
                wrong(
                        "  tee:",
                        "  cock: {kind: tee}\n  tee:",
                        "k.yaml:25:3: components: \"cock\" is there twice; the first is in line 12."),
                wrong(
                        "[rear, top]",
                        "[rear, topp]",
                        "k.yaml:17:20: components / cock / behind: there is no panel \"topp\"; there are top and rear."
                                + " Maybe \"top\"."),
                wrong(
                        "title:",
                        "titel:",
                        "k.yaml:1:1: \"title\" is missing.",
                        "k.yaml:2:1: titel: \"titel\" is not known here; known are wetside machine, title, about, case,"
                                + " panels, revisions, built for, components, lines, wires, contacts and linkages. Maybe"
                                + " \"title\"."),
                wrong(
                        "cock:\n    kind",
                        "Cock 1:\n    kind",
                        "k.yaml:12:3: components / Cock 1: \"Cock 1\": a component is named with small letters, digits"
                                + " and hyphens.",
                        "k.yaml:31:17: lines / 1: there is no component \"cock\". Maybe \"Cock 1\".",
                        "k.yaml:32:12: lines / 2 / join: there is no component \"cock\". Maybe \"Cock 1\"."),
                wrong(
                        "components:",
                        "components: 7\nabout:",
                        "k.yaml:10:13: components: a map (name: value) is wanted here."));
    }

    static Stream<Arguments> joins() {
        return Stream.of(
                wrong(
                        "cock.out >",
                        "cock.aut >",
                        "k.yaml:32:12: lines / 2 / join: \"cock\" is a mains cock and has no port \"aut\"; it has in and"
                                + " out. Maybe \"out\"."),
                wrong(
                        "cock.out >",
                        "cok.out >",
                        "k.yaml:32:12: lines / 2 / join: there is no component \"cok\". Maybe \"cock\"."),
                wrong(
                        "mains.out > cock.in",
                        "mains.out > socket.live",
                        "k.yaml:31:17: lines / 1: \"socket.live\" is for current, but lines join water and steam; it"
                                + " belongs under wires."),
                wrong(
                        "mains.out > cock.in",
                        "mains.out cock.in",
                        "k.yaml:31:5: lines / 1: a join names two ports: \"component.port > component.port\"."),
                wrong(
                        "mains.out > cock.in",
                        "mains.out > cock",
                        "k.yaml:31:17: lines / 1: \"cock\" names no port; a port is written \"component.port\"."),
                wrong(
                        "mains.out > cock.in",
                        "mains.out > mains.out",
                        "k.yaml:31:5: lines / 1: \"mains.out\" is joined to itself."),
                wrong(
                        "- boiler.out > tee.a:b",
                        "- boiler.in > tee.a:b",
                        "k.yaml:34:5: lines / 4: \"boiler.in\" is joined twice, first in line 32; three ways meet in a"
                                + " tee."),
                wrong(
                        "  - mains.out > cock.in\n",
                        "",
                        "k.yaml:11:3: components / mains: port \"out\" (the tap in the wall) is joined to nothing; it"
                                + " belongs under lines.",
                        "k.yaml:12:3: components / cock: port \"in\" (from the mains) is joined to nothing; it belongs"
                                + " under lines."),
                wrong(
                        "socket.live > element.in",
                        "socket.live > socket.neutral",
                        "k.yaml:28:3: components / element: port \"in\" (one end) is joined to nothing; it belongs"
                                + " under wires."),
                wrong("length: 0.4 m, ", "", "k.yaml:32:5: lines / 2: \"length\" is missing."),
                wrong(
                        "rise: 10 cm",
                        "rise: 1 m",
                        "k.yaml:32:67: lines / 2 / rise: a line cannot rise or fall further than it is long."),
                wrong(
                        "bore: 6 mm, ",
                        "bore: 6 m, ",
                        "k.yaml:32:40: lines / 2 / bore: the bore of a line lies between 0.1 mm and 100 mm."),
                wrong(
                        "12 W/K",
                        "0 W/K",
                        "k.yaml:39:56: contacts / 1 / conductance: a conductance is greater than 0; without one the two"
                                + " have one temperature."),
                wrong(
                        "join: cock.out > boiler.in",
                        "join: mains.out > cock.in:out > boiler.in",
                        "k.yaml:32:12: lines / 2 / join: a join with measures of its own names two ports, not a chain.",
                        "k.yaml:32:12: lines / 2 / join: \"mains.out\" is joined twice, first in line 31; three ways"
                                + " meet in a tee.",
                        "k.yaml:32:24: lines / 2 / join: \"cock.in\" is joined twice, first in line 31; three ways meet"
                                + " in a tee."));
    }

    static Stream<Arguments> dangers() {
        return Stream.of(
                wrong(
                        "  - socket.earth > boiler.earth\n",
                        "",
                        "k.yaml:22:3: components / boiler: live parts in metal: port \"earth\" must be wired to the"
                                + " earth of the machine."),
                wrong(
                        "  - {join: boiler.out > valve.in, only in revisions: [A]}\n",
                        "",
                        "k.yaml:22:3: components / boiler: nothing relieves this vessel: no line leads from it to a"
                                + " safety or over-pressure valve without passing something that can shut (in revision"
                                + " A).",
                        "k.yaml:26:3: components / valve: port \"in\" (from the boiler) is joined to nothing; it belongs"
                                + " under lines (in revision A)."),
                wrong(
                        "{kind: tee, only in revisions: B}",
                        "{kind: mains cock, only in revisions: B}",
                        "k.yaml:34:18: lines / 4: \"tee\" is a mains cock and has no port \"a\"; it has in and out.",
                        "k.yaml:34:18: lines / 4: \"tee\" is a mains cock and has no port \"b\"; it has in and out."));
    }

    static Stream<Arguments> roles() {
        return Stream.of(
                wrong(
                        "element: {kind: heating element}",
                        "element: {kind: heating element, roles: socket}",
                        "k.yaml:28:3: components / element: role \"socket\" is already that of socket; several alike"
                                + " need a station each."),
                wrong(
                        "element: {kind: heating element}",
                        "element: {kind: heating element, roles: element, station: left group}",
                        "k.yaml:28:3: components / element: nothing but this plays \"element\": a station is for what"
                                + " there is several times."),
                wrong(
                        "element: {kind: heating element}",
                        "element: {kind: heating element, station: left group}",
                        "k.yaml:28:3: components / element: a part at a station needs a role: what it is there for"
                                + " procedures."));
    }

    static Stream<Arguments> revisions() {
        return Stream.of(
                wrong(
                        "2021-06",
                        "2015-06",
                        "k.yaml:9:21: revisions / 2 / from: revisions stand oldest first, but 2015-06 is not after"
                                + " 2016-03 of revision A."),
                wrong(
                        "2021-06",
                        "June 2021",
                        "k.yaml:9:21: revisions / 2 / from: \"June 2021\" is no month; a month is written like 2021-06."),
                wrong(
                        "2021-06",
                        "2021-13",
                        "k.yaml:9:21: revisions / 2 / from: \"2021-13\" is no month; a month is written like 2021-06."),
                wrong(
                        "2021-06",
                        "2121-06",
                        "k.yaml:9:21: revisions / 2 / from: revision from 2121-06: that is no date an espresso machine"
                                + " was built."),
                wrong(
                        "in revision B",
                        "in revision D",
                        "k.yaml:21:5: components / cock / in revision D: there is no revision \"D\"; there are A and"
                                + " B."),
                wrong(
                        "in revision B",
                        "built for 120 V",
                        "k.yaml:21:5: components / cock / built for 120 V: this file has no section \"built for\"."),
                wrong(
                        "revisions: B}",
                        "revisions: D}",
                        "k.yaml:25:39: components / tee / only in revisions: there is no revision \"D\"; there are A and"
                                + " B."));
    }

    static Stream<Arguments> notEvenYaml() {
        return Stream.of(
                text("", "k.yaml: the file is empty."),
                text("# only a remark\n", "k.yaml: the file is empty."),
                text(
                        "Dear Sir, the machine\nis broken\n",
                        "k.yaml:1:1: this is no machine file: it should consist of lines \"name: value\" and begin with"
                                + " \"wetside machine: 1\"."),
                text(
                        "Dear Sir,\nit leaks: help\n",
                        "k.yaml:2:9: this is not valid YAML: mapping values are not allowed here."),
                text("a\u0001b", "k.yaml: this is not a text file: there are control characters in it."),
                text("[".repeat(100_000), "k.yaml:1:21: this is nested more than 20 deep."),
                text(
                        "a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n",
                        "k.yaml:2:8: aliases (*name) are not used here; write the values out."),
                text(
                        "title: x\n",
                        "k.yaml:1:1: this is no wetside machine file: it has no line \"wetside machine: 1\"."),
                text(
                        "wetside machine: 7\n",
                        "k.yaml:1:18: wetside machine: this Wetside reads version 1 of wetside machine files."),
                text("a: !!java.net.URL x\n", "k.yaml:1:4: tags (!name) are not used here; leave it out."),
                text("a: 1\n---\nb: 2\n", "k.yaml:2:1: a second document begins here; one file holds one."),
                text(
                        "{a: 1",
                        "k.yaml:1:6: this is not valid YAML: while parsing a flow mapping, expected ',' or '}', but got"
                                + " <stream end>."));
    }

    @ParameterizedTest
    @MethodSource({"values", "names", "joins", "dangers", "roles", "revisions", "notEvenYaml"})
    void saysWhatIsWrongAndWhere(String text, List<String> expected) {
        assertThat(problems(text).stream().map(Problem::line)).containsExactlyElementsOf(expected);
    }

    @Test
    void showsTheLineAndACaret() {
        String text = MachineFileTest.kettle().replace("12 bar", "90 bar");
        assertThat(problems(text).get(0)).hasToString("""
                k.yaml:26:55: components / valve / set / opening pressure: "90 bar" makes no sense: opening pressure of a \
                safety valve lies between 0.50 bar and 16.0 bar.
                   25 |   tee: {kind: tee, only in revisions: B}
                   26 |   valve: {kind: safety valve, set: {opening pressure: 90 bar}}
                      |                                                       ^^^^^^
                   27 |   socket: {kind: socket, roles: [socket]}""");
    }

    @Test
    void aShutOffBetweenBoilerAndValveIsNoRelief() {
        String text = MachineFileTest.kettle()
                .replace("{kind: tee, only in revisions: B}", "{kind: mains cock, only in revisions: B}")
                .replace("tee.a:b", "tee.in:out");
        assertThat(problems(text))
                .singleElement()
                .satisfies(p -> assertThat(p.what())
                        .startsWith("nothing relieves this vessel")
                        .endsWith("(in revision B)"));
    }

    @Test
    void allProblemsAreToldAtOnceInTheOrderOfTheFile() {
        String text = MachineFileTest.kettle()
                .replace("12 bar", "12 mm")
                .replace("300 mm", "300")
                .replace("cock.out >", "cock.uot >");
        assertThat(problems(text)).extracting(p -> p.spot().line()).containsExactly(3, 26, 32);
    }

    @Test
    void aThousandProblemsStillMakeAReadableMessage() {
        StringBuilder text = new StringBuilder(MachineFileTest.kettle());
        for (int i = 0; i < 1000; i++) {
            text.append("word").append(i).append(": x\n");
        }
        BadFile bad =
                catchThrowableOfType(BadFile.class, () -> MachineFile.read("k.yaml", text.toString(), SmallKinds.ALL));
        assertThat(bad.problems()).hasSize(500);
        assertThat(bad.getMessage().lines()).hasSizeLessThan(300).last().isEqualTo("… and 450 more");
    }

    private static Arguments wrong(String right, String wrong, String... expected) {
        assertThat(MachineFileTest.kettle()).contains(right);
        return Arguments.of(MachineFileTest.kettle().replace(right, wrong), List.of(expected));
    }

    private static Arguments text(String text, String... expected) {
        return Arguments.of(text, List.of(expected));
    }

    private static List<Problem> problems(String text) {
        BadFile bad = catchThrowableOfType(BadFile.class, () -> MachineFile.read("k.yaml", text, SmallKinds.ALL));
        assertThat(bad).isNotNull();
        return bad.problems();
    }
}
