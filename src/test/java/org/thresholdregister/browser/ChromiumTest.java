package org.thresholdregister.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ScreenshotAnimations;
import com.microsoft.playwright.options.ServiceWorkerPolicy;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test of pages in the browser, whoever serves them. Each test has a context of its own (cookies, storage); it fails
 * if a page asks another host for anything or has an error.
 */
@Tag("browser")
@ExtendWith(Chromium.class)
abstract class ChromiumTest {

    private static final int WIDE = 1280;
    private static final int WIDE_HEIGHT = 900;
    private static final int PHONE = 390;
    private static final int PHONE_HEIGHT = 844;
    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    private BrowserContext context;
    private PageWatch watch;
    private Page page;

    /** Where the pages are, such as {@code http://localhost:8080}. */
    protected abstract String address();

    @BeforeEach
    final void openContext(Browser browser) {
        context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(WIDE, WIDE_HEIGHT)
                .setLocale("en-US")
                .setServiceWorkers(ServiceWorkerPolicy.BLOCK));
        watch = new PageWatch(context);
        page = context.newPage();
    }

    @AfterEach
    final void closeContext() {
        if (!page.isClosed()) {
            // What the page reported before this answer has arrived with it.
            page.evaluate("0");
        }
        context.close();
        watch.assertNothingHappened();
    }

    /** The test's page, {@value #WIDE} pixels wide. */
    protected final Page page() {
        return page;
    }

    /** Opens a path of the app, such as {@code /workers}. */
    protected final Page open(String path) {
        page.navigate(address() + path);
        return page;
    }

    /**
     * Says that a request to elsewhere or an error whose text contains {@code part} is part of the test, which then
     * fails where none occurs.
     */
    protected final void expectProblem(String part) {
        watch.expect(part);
    }

    /**
     * Saves what the page shows as {@code target/screenshots/<name>-wide.png} and {@code <name>-phone.png}, and fails
     * where it does not fit the width.
     */
    protected final void screenshots(String name) {
        screenshot(name + "-phone.png", PHONE, PHONE_HEIGHT);
        screenshot(name + "-wide.png", WIDE, WIDE_HEIGHT);
    }

    private void screenshot(String file, int width, int height) {
        page.setViewportSize(width, height);
        settle();
        page.screenshot(new Page.ScreenshotOptions()
                .setPath(SCREENSHOTS.resolve(file))
                .setAnimations(ScreenshotAnimations.DISABLED));
        assertFitsWidth(file);
    }

    private void assertFitsWidth(String file) {
        Object beyond = page.evaluate("""
                () => document.documentElement.scrollWidth <= window.innerWidth ? '' :
                  [...document.querySelectorAll('body *')]
                    .filter(element => element.getBoundingClientRect().right > window.innerWidth)
                    .map(element => element.tagName.toLowerCase() + (element.id ? '#' + element.id : '')
                      + [...element.classList].map(name => '.' + name).join(''))
                    .slice(0, 5).join(', ') || 'something'
                """);
        assertThat(beyond).as("%s: wider than the window", file).isEqualTo("");
    }

    /** Waits until fonts are there and the layout has followed a change of the window. */
    private void settle() {
        page.evaluate("""
                async () => {
                  await document.fonts.ready;
                  await new Promise(done => requestAnimationFrame(() => requestAnimationFrame(done)));
                }
                """);
    }
}
