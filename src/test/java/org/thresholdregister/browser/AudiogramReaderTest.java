package org.thresholdregister.browser;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ReducedMotion;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramSvg;

/**
 * The drawn audiogram and its reader in the browser, under a Content-Security-Policy without inline scripts and styles:
 * a breach of it is an error in the page, which fails the test.
 */
class AudiogramReaderTest extends ChromiumTest {

    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'";

    /** Both ears start at 10 dB HL in 500 Hz; the left ear's baseline has no response of a level not given. */
    private static final AudiogramComparison COMPARISON = AudiogramComparison.of(
            test(LocalDate.of(2026, 3, 9), TestPurpose.ANNUAL)
                    .with(Ear.RIGHT, Frequency.HZ_4000, Threshold.measured(25))
                    .with(Ear.LEFT, Frequency.HZ_4000, Threshold.noResponseAt(95))
                    .with(Ear.LEFT, Frequency.HZ_6000, Threshold.notGiven()),
            test(LocalDate.of(2020, 2, 3), TestPurpose.BASELINE)
                    .with(Ear.RIGHT, Frequency.HZ_4000, Threshold.measured(5))
                    .with(Ear.LEFT, Frequency.HZ_8000, Threshold.noResponse()));

    private static HttpServer server;

    private static Audiogram test(LocalDate day, TestPurpose purpose) {
        var builder = new Audiogram.Builder(day, purpose);
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear, frequency, Threshold.measured(10));
            }
        }
        return builder.build();
    }

    @BeforeAll
    static void servePages() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        serve("/reader.js", "text/javascript", bundle());
        serve("/style.css", "text/css", "html { color-scheme: light dark } body { margin: 8px }".getBytes(UTF_8));
        serve("/drawing", "text/html", """
                <!doctype html>
                <html lang="en">
                <title>Audiogram</title>
                <link rel="icon" href="data:,">
                <link rel="stylesheet" href="/style.css">
                <script type="module" src="/reader.js"></script>
                <main><h1>Audiogram</h1><audiogram-reader>%s</audiogram-reader></main>
                """.formatted(AudiogramSvg.forScreen(COMPARISON))
                .getBytes(UTF_8));
        server.start();
    }

    private static byte[] bundle() throws IOException {
        try (InputStream bundle =
                AudiogramReaderTest.class.getResourceAsStream("/META-INF/resources/js/audiogram-reader.js")) {
            return bundle.readAllBytes();
        }
    }

    private static void serve(String path, String type, byte[] body) {
        server.createContext(path, exchange -> {
            exchange.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
            exchange.getResponseHeaders().set("Content-Security-Policy", POLICY + "; img-src data:");
            exchange.sendResponseHeaders(200, body.length);
            exchange.getResponseBody().write(body);
            exchange.close();
        });
    }

    @AfterAll
    static void stop() {
        server.stop(0);
    }

    @Override
    protected String address() {
        return "http://localhost:" + server.getAddress().getPort();
    }

    @BeforeEach
    void openTheDrawing() {
        open("/drawing");
        readout().waitFor();
    }

    private Locator readout() {
        return page().locator("audiogram-reader .readout");
    }

    private String spoken() {
        return page().locator("audiogram-reader [aria-live=polite]").textContent();
    }

    private void press(String... keys) {
        for (String key : keys) {
            page().keyboard().press(key);
        }
    }

    private Locator symbol(Ear ear, String series, Frequency frequency) {
        return page().locator(
                        "[data-ear=%s][data-series=%s][data-hz='%d']".formatted(ear.word(), series, frequency.hertz()));
    }

    @Test
    void theKeyboardReadsEachFrequencyEarAndTest() {
        assertThat(spoken()).isEmpty();
        press("Tab");
        assertThat(spoken()).isEqualTo("Right ear, 500 Hz, 10 dB HL; baseline 10 dB HL");
        press("ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
        assertThat(spoken()).isEqualTo("Right ear, 4000 Hz, 25 dB HL; baseline 5 dB HL");
        assertThat(readout().innerText()).isEqualTo(spoken());
        press("ArrowDown");
        assertThat(spoken()).isEqualTo("Left ear, 4000 Hz, no response at 95 dB HL; baseline 10 dB HL");
        press("ArrowRight");
        assertThat(spoken()).isEqualTo("Left ear, 6000 Hz, not tested; baseline 10 dB HL");
        press("End");
        assertThat(spoken()).isEqualTo("Left ear, 8000 Hz, 10 dB HL; baseline no response, level not given");
        press("ArrowDown", "Home");
        assertThat(spoken()).isEqualTo("Right ear, 500 Hz, baseline 10 dB HL; latest 10 dB HL");
    }

    @Test
    void theRingStandsAroundTheSymbolThatIsRead() {
        page().emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        press("Tab", "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight");
        assertRingAround(symbol(Ear.RIGHT, "latest", Frequency.HZ_4000).locator("circle"));
        page().setViewportSize(390, 844);
        assertRingAround(symbol(Ear.RIGHT, "latest", Frequency.HZ_4000).locator("circle"));
        press("ArrowDown", "ArrowRight");
        assertThat(page().locator("audiogram-reader .ring").isVisible())
                .as("a ring around what is not drawn")
                .isFalse();
    }

    private void assertRingAround(Locator symbol) {
        BoundingBox drawn = symbol.boundingBox();
        BoundingBox ring = page().locator("audiogram-reader .ring").boundingBox();
        assertThat(ring.x + ring.width / 2).isCloseTo(drawn.x + drawn.width / 2, Offset.offset(1.0));
        assertThat(ring.y + ring.height / 2).isCloseTo(drawn.y + drawn.height / 2, Offset.offset(1.0));
    }

    @Test
    void thePointerReadsBothEarsWhereTheyStandAtOnePointAndSpeaksNothing() {
        BoundingBox circle =
                symbol(Ear.RIGHT, "latest", Frequency.HZ_500).locator("circle").boundingBox();
        page().mouse().move(circle.x + circle.width / 2, circle.y + circle.height / 2);
        assertThat(readout().innerText()).isEqualTo("""
                        Right ear, 500 Hz, 10 dB HL; baseline 10 dB HL
                        Left ear, 500 Hz, 10 dB HL; baseline 10 dB HL""");
        assertThat(spoken()).isEmpty();
        page().mouse().move(1200, 880);
        assertThat(readout().innerText()).startsWith("Point at a symbol");
    }

    @Test
    void pageUpAndPageDownAskForTheTestBeforeAndAfter() {
        page().evaluate("""
                () => {
                  window.steps = [];
                  document.body.addEventListener('audiogram-step', event => window.steps.push(event.detail));
                }
                """);
        press("Tab", "PageUp", "PageDown", "PageDown", "Control+PageUp");
        assertThat(page().evaluate("window.steps")).isEqualTo(List.of(-1, 1, 1));
    }

    @Test
    void anotherDrawingIsReadFromTheSamePlace() {
        press("Tab", "End", "ArrowLeft", "ArrowLeft");
        Audiogram earlier = test(LocalDate.of(2024, 3, 4), TestPurpose.ANNUAL)
                .with(Ear.RIGHT, Frequency.HZ_4000, Threshold.measured(15));
        page().evaluate(
                        "svg => { document.querySelector('audiogram-reader').innerHTML = svg }",
                        AudiogramSvg.forScreen(AudiogramComparison.of(earlier)));
        page().waitForFunction("() => document.querySelector('audiogram-reader').shadowRoot"
                + ".querySelector('[aria-live]').textContent.includes('15 dB')");
        assertThat(spoken()).isEqualTo("Right ear, 4000 Hz, 15 dB HL");
    }

    @Test
    void theDrawingKeepsItsShapeInANarrowWindow() {
        page().setViewportSize(320, 640);
        BoundingBox svg = page().locator("svg.audiogram").boundingBox();
        String[] box = page().locator("svg.audiogram").getAttribute("viewBox").split(" ");
        assertThat(svg.width).isLessThanOrEqualTo(304);
        assertThat(svg.width / svg.height)
                .isCloseTo(Double.parseDouble(box[2]) / Double.parseDouble(box[3]), Offset.offset(0.001));
    }

    /** Rules: WCAG 2.2 A and AA as axe-core checks them. */
    @Test
    void theReaderPassesTheAccessibilityCheck() {
        press("Tab");
        assertThat(new AxeBuilder(page()).analyze().getViolations()).isEmpty();
        screenshots("audiogram-reader");
    }
}
