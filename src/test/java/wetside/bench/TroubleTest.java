package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.shop.Jobs;
import wetside.shop.Registered;
import wetside.shop.Shop;

/** A disk that is full and a file that another program holds: told in words, nothing lost, what was typed kept. */
class TroubleTest {
    @TempDir
    Path folder;

    private Shop shop;
    private Bench bench;
    private Browser browser;
    private String job;

    @BeforeEach
    void open() {
        shop = Shop.open(folder);
        long machine = Registered.machine(shop, "1", "spring-lever", "B", "230 V", "O", "tank");
        job = "/jobs/" + new Jobs(shop, Clock.systemUTC()).open(machine, "hums", "desk");
        bench = Bench.start(shop, Clock.systemUTC(), 0);
        browser = new Browser(bench);
    }

    @AfterEach
    void close() {
        bench.close();
        shop.close();
    }

    private HttpResponse<String> note(String words) throws Exception {
        return browser.post(
                job + "/entries", "version", browser.version(job), "sort", "note", "words", words, "person", "Ines");
    }

    @Test
    void aFullDisk() throws Exception {
        assertThat(note("before").statusCode()).isEqualTo(200);
        long pages = shop.read(
                h -> h.createQuery("PRAGMA page_count").mapTo(Long.class).one());
        shop.read(h -> h.createQuery("PRAGMA max_page_count = " + (pages + 1))
                .mapTo(Long.class)
                .one());
        HttpResponse<String> full = null;
        for (int i = 0; i < 20 && (full == null || full.statusCode() == 200); i++) {
            full = note("long " + i + " " + "word ".repeat(700));
        }
        assertThat(full.statusCode()).isEqualTo(503);
        assertThat(full.body())
                .contains("the disk is full: nothing was saved", "word word")
                .doesNotContain("SQLITE");
        shop.read(h -> h.createQuery("PRAGMA max_page_count = 1000000")
                .mapTo(Long.class)
                .one());
        assertThat(note("after").body()).contains("before", "after</p>");
    }

    @Test
    void aFileThatAnotherProgramHolds() throws Exception {
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Shop.FILE))) {
            String version = browser.version(job);
            other.createStatement().execute("BEGIN IMMEDIATE");
            HttpResponse<String> held =
                    browser.post(job + "/entries", "version", version, "sort", "note", "words", "kept?", "person", "I");
            assertThat(held.statusCode()).isEqualTo(503);
            assertThat(held.body()).contains("held by another program", "kept?</textarea>");
            other.createStatement().execute("ROLLBACK");
        }
        assertThat(note("kept now").body()).contains("kept now</p>");
    }
}
