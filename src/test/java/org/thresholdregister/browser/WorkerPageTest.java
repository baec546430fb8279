package org.thresholdregister.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** The page of one worker, over the sample plant. */
class WorkerPageTest extends BrowserTest {

    @Test
    void look() {
        signInAs(DemoAccounts.SAFETY_OFFICER);
        for (String id : "0061 0101 0215 0107 0163 0131 0398 0181 0169 0201 0113 0137 0198 0021".split(" ")) {
            page().setViewportSize(1280, 900);
            open("/worker/FG-" + id);
            page().locator(id.equals("0398") ? "h1" : "svg.audiogram").first().waitFor();
            System.out.println("LEAD " + id + " " + page().locator(".tr-lead").innerText());
            if (id.matches("0061|0107|0131|0201|0398|0181")) {
                shot(id + "-tall", 1280, 3000);
            }
            if (id.equals("0061")) {
                page().locator(".tr-found-test summary").nth(10).click();
                System.out.println(page().locator("details[open]").innerText());
                shot("phone-tall", 390, 5000);
                page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
                shot("dark-tall", 1280, 2600);
                page().emulateMedia(new Page.EmulateMediaOptions()
                        .setColorScheme(ColorScheme.DARK)
                        .setMedia(Media.PRINT));
                shot("print-tall", 718, 4000);
                page().pdf(new Page.PdfOptions()
                        .setPath(Path.of("target/screenshots/w.pdf"))
                        .setFormat("A4"));
                page().emulateMedia(new Page.EmulateMediaOptions()
                        .setMedia(Media.SCREEN)
                        .setColorScheme(ColorScheme.LIGHT));
                page().setViewportSize(1280, 900);
                page().getByText("Enter a decision").click();
                page().waitForTimeout(800);
                shot("dialog", 1280, 900);
                shot("dialog-phone", 390, 844);
            }
        }
    }

    private void shot(String name, int w, int h) {
        page().setViewportSize(w, h);
        page().waitForTimeout(300);
        page().screenshot(new Page.ScreenshotOptions().setPath(Path.of("target/screenshots/w-" + name + ".png")));
    }
}
