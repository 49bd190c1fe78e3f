package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.shop.Shop;

class BenchTest {
    @TempDir
    static Path folder;

    private static Shop shop;
    private static Bench bench;

    @BeforeAll
    static void open() {
        shop = Shop.open(folder);
        bench = Bench.start(shop, Clock.systemUTC(), 0);
    }

    @AfterAll
    static void close() {
        bench.close();
        shop.close();
    }

    private static HttpResponse<String> get(String path, String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + bench.port() + path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void showsTheRackAndAllItNeedsFromTheJar() throws Exception {
        HttpResponse<String> page = get("/jobs");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("Open jobs").contains("waiting for a part");
        assertThat(page.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'");
        assertThat(page.headers().firstValue(Timing.HEADER).orElse("")).matches("bench;dur=\\d+\\.\\d");
        for (String asset :
                new String[] {"bench.css", "bench.js", "colours.css", "mark.svg", "encode-sans-400.woff2"}) {
            assertThat(get(Assets.address() + "/" + asset).statusCode())
                    .as(asset)
                    .isEqualTo(200);
        }
        assertThat(get(Assets.address() + "/..%2f..%2fsimplelogger.properties").statusCode())
                .isEqualTo(404);
    }

    @Test
    void whatIsNotThereIsSaid() throws Exception {
        HttpResponse<String> page = get("/no-such-page");
        assertThat(page.statusCode()).isEqualTo(404);
        assertThat(page.body()).contains("There is no such page.").doesNotContain("Exception");
    }

    @Test
    void otherSitesGetNothing() throws Exception {
        assertThat(get("/jobs", "Host", "bench.evil.example").statusCode()).isEqualTo(403);
        HttpRequest form = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + bench.port() + "/jobs"))
                .header("Origin", "http://evil.example")
                .POST(HttpRequest.BodyPublishers.ofString("complaint=x"))
                .build();
        assertThat(HttpClient.newHttpClient()
                        .send(form, HttpResponse.BodyHandlers.ofString())
                        .statusCode())
                .isEqualTo(403);
    }
}
