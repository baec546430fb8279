package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import org.junit.jupiter.api.Test;

class FirstPageTest extends BrowserTest {

    @Test
    void theFirstPageAsksForASignIn() {
        open("/");

        assertThat(page().locator("input[type=password]")).isVisible();
        screenshots("sign-in");
    }
}
