package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.shop.Part;
import wetside.shop.Register;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shelf;
import wetside.shop.Shop;

/** From complaint to signature, as a browser without scripts does it. */
class JobPagesTest {
    @TempDir
    static Path folder;

    private static Shop shop;
    private static Bench bench;
    private static Browser browser;

    @BeforeAll
    static void open() {
        shop = Shop.open(folder);
        Register register = new Register(shop);
        long owner = register.owner("R. Osgood", "0100 2417", "", "");
        register.machine(new RegisteredMachine(
                0,
                "C 24 0718",
                "twin-boiler-lever",
                "B",
                "",
                owner,
                "tank",
                null,
                null,
                229.0,
                140.0,
                null,
                "",
                "",
                0));
        new Shelf(shop, Clock.systemUTC())
                .add(new Part(0, "FM-2107", "rotary vane pump", "", "A 1", 2, 2, 0, 118.0, 0));
        bench = Bench.start(shop, Clock.systemUTC(), 0);
        browser = new Browser(bench);
    }

    @AfterAll
    static void close() {
        bench.close();
        shop.close();
    }

    /** Takes a job in and gives its address. */
    private static String job(String complaint) throws Exception {
        HttpResponse<String> page =
                browser.post("/jobs", "who", "C 24 0718", "complaint", complaint, "person", "Mira", "then", "save");
        assertThat(page.statusCode()).as(page.body()).isEqualTo(200);
        return page.uri().getPath();
    }

    private static HttpResponse<String> add(String job, String what, String... fields) throws Exception {
        String[] all = Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = "version";
        all[fields.length + 1] = browser.version(job);
        return browser.post(job + "/" + what, all);
    }

    @Test
    void aJobGoesFromComplaintToSignatureAndReport() throws Exception {
        String job = job("The needle won’t go past six & the shot gushes.");
        add(job, "readings", "phase", "found", "asked", "blind-disc pressure", "said", "6.2 bar");
        assertThat(compared(job)).contains("blind-disc pressure", "6.2 bar", "▼ low", "class=\"railbox\"");
        add(job, "finding", "cause", "pump: worn vanes", "words", "Vanes scored.", "person", "Ines");
        String used = add(job, "parts", "part", "FM-2107", "count", "1").body();
        assertThat(used).contains("Shelf now 1, minimum 2: to order.", "118.00");
        assertThat(new Shelf(shop, Clock.systemUTC())
                        .byNumber("FM-2107")
                        .orElseThrow()
                        .onHand())
                .isEqualTo(1);
        add(job, "readings", "phase", "left", "asked", "blind-disc pressure", "said", "8.5");
        add(job, "time", "minutes", "94", "what", "pump");
        add(job, "entries", "sort", "yours", "words", "Fill the tank before it reaches the mark.");
        String page = browser.get(job).body();
        assertThat(page)
                .contains("1 h 34", "water flow in 10 s", "qualified electrician", "Next check: cold leak check");
        add(job, "proof", "what", "protective conductor resistance", "result", "failed", "read", "2 Ω");
        assertThat(text(browser.bytes(job + "/report.pdf")))
                .contains("has not passed a check after the repair: it stays off", "0 of 7 checks", "1 failed");
        for (String check : new String[] {
            "cold leak check",
            "blind-disc pressure",
            "water flow in 10 s",
            "hot leak check",
            "protective conductor resistance",
            "insulation resistance",
            "labels and covers back, owner shown"
        }) {
            add(job, "proof", "what", check, "result", "passed", "read", check.startsWith("ins") ? "42 MΩ" : "");
        }
        assertThat(browser.get(job).body()).contains("7 of 7", "42 MΩ", "href=\"#sign\"");
        assertThat(add(job, "signature", "name", "R. Osgood", "strokes", "10,20 30,40 50,60;70,80 90,100")
                        .body())
                .contains("Signed by R. Osgood", "M10 20L30 40 50 60M70 80L90 100");
        assertThat(add(job, "signature", "name", "Somebody", "strokes", "").statusCode())
                .isEqualTo(409);
        add(job, "state", "state", "DONE");
        assertThat(browser.get("/done").body()).contains("the shot gushes");

        String owner = text(browser.bytes(job + "/report.pdf"));
        assertThat(owner)
                .contains("What we found and did", "We found this: the pump is worn.")
                .contains("We have fitted a new rotary vane pump.", "It has passed every check")
                .contains("The needle won’t go past six & the shot gushes.")
                .contains(
                        "6.2 bar → 8.5 bar (should be 8",
                        "Fill the tank",
                        "Please leave the case shut",
                        "Signed by R. Osgood");
        String file = text(browser.bytes(job + "/report.pdf?for=file"));
        assertThat(file).contains("FM-2107", "as found", "as left", "low", "42 MΩ", "flow is down", "Mira", "Ines");
    }

    /** The page once the twin has said what to expect, which a page does not wait for. */
    private static String compared(String job) throws Exception {
        for (int i = 0; i < 60 && !browser.get(job).body().contains("railbox"); i++) {
            Thread.sleep(500);
        }
        return browser.get(job).body();
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void ofTwoWhoWriteAtOnceNeitherLosesAnything() throws Exception {
        String job = job("hums");
        String version = browser.version(job);
        browser.post(job + "/entries", "version", version, "sort", "work", "words", "pump looked at", "person", "Ines");
        HttpResponse<String> second = browser.post(
                job + "/entries", "version", version, "sort", "note", "words", "rings <twice>", "person", "Tomas");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body())
                .contains("changed by Ines", "pump looked at", "rings &lt;twice&gt;</textarea>")
                .contains("<option value=\"note\" selected>");
        String again = browser.version(job);
        assertThat(browser.post(job + "/entries", "version", again, "sort", "note", "words", "rings <twice>")
                        .body())
                .contains("pump looked at", "rings &lt;twice&gt;</p>");
    }

    @Test
    void whatMakesNoSenseComesBackWithTheReason() throws Exception {
        String job = job("hums");
        HttpResponse<String> wrong =
                add(job, "readings", "phase", "found", "asked", "blind-disc pressure", "said", "six");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("Not saved", "value=\"six\"").doesNotContain("Exception");
        assertThat(add(job, "readings", "phase", "found", "asked", "phase of the moon", "said", "1")
                        .body())
                .contains("this machine has no");
        assertThat(add(job, "time", "minutes", "a while").body()).contains("'a while' is no number");
        assertThat(add(job, "assigned", "due", "soon").body()).contains("is no date");
        assertThat(add(job, "entries", "sort", "note", "words", "x".repeat(5000))
                        .statusCode())
                .isEqualTo(422);
        assertThat(add(job, "signature", "name", "R", "strokes", "M0 0<script>").statusCode())
                .isEqualTo(422);
    }

    @Test
    void aCorrectionAddsAndTheFirstStaysOnRecord() throws Exception {
        String job = job("drips");
        add(job, "readings", "phase", "found", "asked", "steam gauge, hot", "said", "2.9 bar");
        String page = compared(job);
        assertThat(page).contains("2.90 bar</b>", "▲ high");
        String entry = page.replaceAll("(?s).*name=\"corrects\" value=\"(\\d+)\".*", "$1");
        String after = add(job, "entries", "sort", "note", "corrects", entry, "words", "1.29 bar, misread")
                .body();
        assertThat(after).contains("<s>steam gauge, hot: 2.90 bar", "1.29 bar, misread");
        assertThat(text(browser.bytes(job + "/report.pdf?for=file"))).contains("[set right below]");
        assertThat(add(job, "entries", "sort", "note", "corrects", "999999", "words", "x")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void photosAreKnownByWhatIsInThem() throws Exception {
        String job = job("leaks");
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 1, 2, 3};
        HttpResponse<String> kept = browser.upload(job + "/photos", browser.version(job), "pump.png", png);
        assertThat(kept.body()).contains("Photo: pump.png");
        String address = kept.body().replaceAll("(?s).*<img class=\"photo\" src=\"([^\"]+)\".*", "$1");
        assertThat(browser.bytes(address)).isEqualTo(png);
        assertThat(browser.get(address.replaceAll("\\d+$", "9999")).statusCode())
                .isEqualTo(404);
        HttpResponse<String> wrong = browser.upload(
                job + "/photos",
                browser.version(job),
                "pump.jpg",
                "<script>alert(1)</script>".getBytes(StandardCharsets.UTF_8));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("pump.jpg is no JPEG, PNG or WebP picture");
        HttpResponse<String> large =
                browser.upload(job + "/photos", browser.version(job), "big.png", large(png, 10_500_000));
        assertThat(large.statusCode()).isEqualTo(422);
        assertThat(large.body()).contains("larger than 10 MB");
        HttpResponse<String> larger =
                browser.upload(job + "/photos", browser.version(job), "big.png", large(png, 13_000_000));
        assertThat(larger.statusCode()).isEqualTo(413);
        assertThat(larger.body()).contains("too large");
    }

    private static byte[] large(byte[] head, int size) {
        return Arrays.copyOf(head, size);
    }

    @Test
    void aMachineNotProvedIsDoneOnlyWithAReason() throws Exception {
        String job = job("The needle won't go past five");
        add(job, "finding", "cause", "pump: worn vanes", "words", "");
        add(job, "proof", "what", "insulation resistance", "result", "failed", "read", "0.2 MΩ");
        HttpResponse<String> refused = add(job, "state", "state", "DONE");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("Protective conductor resistance not proved, insulation resistance failed.")
                .contains("Why it goes all the same");
        HttpResponse<String> done = add(job, "state", "state", "DONE", "why", "taken back unrepaired, plug cut off");
        assertThat(done.statusCode()).isEqualTo(200);
        assertThat(done.body())
                .contains("done. Protective conductor resistance not proved, insulation resistance failed. Taken back"
                        + " unrepaired, plug cut off.");
    }
}
