package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.machine.MachineFile;

class MachinePagesTest {
    @TempDir
    static Path folder;

    private static Opened opened;

    @BeforeAll
    static void open() {
        opened = new Opened(folder);
    }

    @AfterAll
    static void close() {
        opened.close();
    }

    private static String body(String path) throws Exception {
        var answer = opened.get(path);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    @Test
    void theRegisterIsFoundBySerialModelAndOwner() throws Exception {
        for (String sought : new String[] {"", "0417", "spring", "bakery%20S"}) {
            assertThat(body("/machines?q=" + sought)).as(sought).contains("S 11 0417");
        }
        assertThat(body("/machines?q=nobody")).doesNotContain("S 11 0417").contains("None of the 1 machines");
        assertThat(MachineFile.names())
                .allSatisfy(n -> assertThat(body("/run")).contains("/machines/file/" + n + "/run"));
    }

    @Test
    void aPartIsALinkInMapAndCabinetAndOpensItsCard() throws Exception {
        String page = body("/machines/" + opened.machine);
        Matcher map = Pattern.compile("<a href=\"(\\?part=safety-valve)\" data-part=\"safety-valve\"")
                .matcher(page);
        assertThat(map.find()).isTrue();
        String chosen = body("/machines/" + opened.machine + map.group(1));
        assertThat(chosen)
                .contains("data-part=\"safety-valve\" class=\"chosen\"")
                .contains("How it fails")
                .containsPattern("<h2>\\d+ [^<]*afety valve");
        assertThat(chosen.substring(chosen.indexOf("id=\"side\""))).contains("data-part=\"safety-valve\"");
        assertThat(opened.get("/machines/" + opened.machine + "?part=flux-compensator")
                        .statusCode())
                .isEqualTo(404);
    }

    @Test
    void nothingOnAPageIsAgainstItsOwnPolicy() throws Exception {
        for (String path : new String[] {"", "?map=wires", "?by=heat", "/readings", "/run"}) {
            assertThat(body("/machines/" + opened.machine + path))
                    .as(path)
                    .doesNotContainPattern("<[^>]+\\sstyle=\"")
                    .doesNotContainPattern("<[^>]+\\son[a-z]+=\"")
                    .doesNotContain("<style")
                    .doesNotContainPattern("<script(?![^>]* src=)");
        }
    }

    @Test
    void aWalkGoesFromStopToStop() throws Exception {
        String first = body("/machines/" + opened.machine + "?follow=water&stop=1");
        assertThat(first)
                .contains("Follow the water, 1 of ")
                .doesNotContain(">Back<")
                .contains("stop=2");
        assertThat(body("/machines/" + opened.machine + "?follow=water&stop=2")).contains(">Back<");
    }

    @Test
    void linesMayBeColouredByWhatARunHasInThem() throws Exception {
        assertThat(body("/machines/" + opened.machine + "?by=pressure")).contains("12 bar");
        assertThat(body("/machines/" + opened.machine + "?by=heat")).contains("140 °C");
    }

    @Test
    void everyBundledFileHasItsPage() throws Exception {
        for (String name : MachineFile.names()) {
            assertThat(body("/machines/file/" + name))
                    .as(name)
                    .contains("data-part=")
                    .contains("machine file");
        }
        assertThat(opened.get("/machines/file/..%2fsecret").statusCode()).isNotEqualTo(200);
        assertThat(opened.get("/machines/file/no-such").statusCode()).isEqualTo(404);
        assertThat(opened.get("/machines/99999").statusCode()).isEqualTo(404);
    }

    @Test
    void jobsOfTheMachineAreListed() throws Exception {
        long job = opened.job("Leaks at the lever");
        assertThat(body("/machines/" + opened.machine)).contains("/jobs/" + job).contains("Leaks at the lever");
    }
}
