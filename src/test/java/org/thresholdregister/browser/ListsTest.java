package org.thresholdregister.browser;

import org.junit.jupiter.api.Test;

class ListsTest extends DemoBrowserTest {
    @Test
    void look() {
        signIn("officer");
        screenshots("today");
        assertAccessible();
        for (String p : new String[] {
            "follow-ups",
            "follow-ups?kind=notice&state=overdue",
            "workers",
            "shifts",
            "shifts?year=2024&outcome=confirmed",
            "workers?status=left&site="
        }) {
            open("/" + p);
            page().locator("h1").waitFor();
            page().waitForTimeout(1500);
            System.out.println(content().substring(0, Math.min(900, content().length())));
            screenshots("look-" + p.replaceAll("[^a-z]+", "-"));
            try {
                assertAccessible();
            } catch (AssertionError e) {
                System.out.println("AXE " + p + e.getMessage());
            }
        }
    }
}
