package org.thresholdregister.browser;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Browser;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The browser tests' own checks, on plain pages: each must be able to fail. */
class WatchedPageTest extends ChromiumTest {

    private static HttpServer server;

    @BeforeAll
    static void servePages() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        page("/plain", "<p>Fernhollow Glassworks</p>");
        page("/too-wide", "<p id='broad' style='width: 600px'>Fernhollow Glassworks</p>");
        page("/image", "<img src='http://elsewhere.example/picture.png'>");
        page("/frame", "<iframe src='/redirect'></iframe>");
        page("/socket", "<script>new WebSocket('ws://elsewhere.example/socket')</script>");
        page("/throwing", "<script>throw new Error('broken script')</script>");
        page("/complaining", "<script>console.error('a complaint')</script>");
        page(
                "/chatting",
                "<script>console.log('a remark')</script><img src='data:image/gif;base64,R0lGODlhAQABAAAAACw='>");
        server.createContext("/redirect", exchange -> {
            exchange.getResponseHeaders().set("Location", "http://elsewhere.example/");
            exchange.sendResponseHeaders(302, -1);
            exchange.close();
        });
        server.start();
    }

    @AfterAll
    static void stop() {
        server.stop(0);
    }

    @Override
    protected String address() {
        return "http://localhost:" + server.getAddress().getPort();
    }

    @Test
    void aPageIsPhotographedWideAndOnAPhone() throws IOException {
        assertThat(open("/plain").textContent("p")).isEqualTo("Fernhollow Glassworks");

        screenshots("plain-page");

        assertThat(sizeOf("plain-page-wide.png")).isEqualTo("1280 x 900");
        assertThat(sizeOf("plain-page-phone.png")).isEqualTo("390 x 844");
    }

    @Test
    void aPageTooWideForAPhoneIsNoticed() {
        open("/too-wide");

        assertThatThrownBy(() -> screenshots("too-wide-page"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("too-wide-page-phone.png")
                .hasMessageContaining("p#broad");
    }

    @ParameterizedTest
    @CsvSource({
        "/image, request to elsewhere: http://elsewhere.example/picture.png",
        "/frame, request to elsewhere: http://elsewhere.example/",
        "/socket, request to elsewhere: ws://elsewhere.example/socket",
        "/throwing, error in the page: Error: broken script",
        "/complaining, error on the console: a complaint",
    })
    void aProblemIsNoticed(String path, String problem, Browser browser) {
        try (var context = browser.newContext()) {
            var watch = new PageWatch(context);
            var page = context.newPage();
            page.navigate(address() + path);
            page.waitForCondition(watch::noticedSomething);

            assertThatThrownBy(watch::assertNothingHappened)
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining(problem);
        }
    }

    @Test
    void anExpectedProblemIsNoFailure() {
        expectProblem("a complaint");
        // Checked when the test ends.
        open("/complaining");
    }

    @Test
    void anExpectedProblemHasToOccur(Browser browser) {
        try (var context = browser.newContext()) {
            var watch = new PageWatch(context);
            context.newPage().navigate(address() + "/plain");
            watch.expect("a complaint");

            assertThatThrownBy(watch::assertNothingHappened)
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining("a complaint");
        }
    }

    @Test
    void aRemarkOnTheConsoleAndAnEmbeddedPictureAreNoProblem() {
        // Checked when the test ends.
        assertThat(open("/chatting").locator("img").count()).isEqualTo(1);
    }

    private static void page(String path, String body) {
        byte[] bytes = ("<!DOCTYPE html><html lang='en'><title>Page</title>"
                        + "<meta name='viewport' content='width=device-width'><link rel='icon' href='data:,'>" + body)
                .getBytes(UTF_8);
        server.createContext(path, exchange -> {
            exchange.getResponseHeaders().set("Content-Type", "text/html; charset=utf-8");
            exchange.sendResponseHeaders(200, bytes.length);
            exchange.getResponseBody().write(bytes);
            exchange.close();
        });
    }

    private static String sizeOf(String screenshot) throws IOException {
        var image = ImageIO.read(Path.of("target", "screenshots", screenshot).toFile());
        return image.getWidth() + " x " + image.getHeight();
    }
}
