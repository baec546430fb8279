package org.thresholdregister.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.TestPropertySource;
import org.thresholdregister.platform.accounts.DemoAccounts;

/** A test of pages over the sample plant, on the sample's own day. */
@ActiveProfiles(DemoAccounts.PROFILE)
@TestPropertySource(properties = "register.today=2026-11-24")
abstract class DemoBrowserTest extends BrowserTest {

    private static final Set<String> GRAVE = Set.of("serious", "critical");

    /** Signs in through the page, which leads to the role's first page. */
    protected final void signIn(String username) {
        open("/login");
        page().locator("#username").fill(username);
        page().locator("#password").fill(DemoAccounts.PASSWORD);
        page().locator("button[type=submit]").click();
        assertThat(page()).not().hasURL(Pattern.compile("/login"));
        page().locator("h1").waitFor();
    }

    /** The part of the page between menu and foot. */
    protected final String content() {
        return page().locator("main").innerText();
    }

    /** Rules: WCAG as axe-core checks them; what is called serious or critical there fails the test. */
    protected final void assertAccessible() {
        List<String> grave = new AxeBuilder(page())
                .analyze().getViolations().stream()
                        .filter(rule -> GRAVE.contains(rule.getImpact()))
                        .map(rule -> rule.getId() + ": " + rule.getHelp() + " "
                                + rule.getNodes().getFirst().getTarget())
                        .toList();
        assertThat(grave).isEmpty();
    }

    protected final void press(String... keys) {
        for (String key : keys) {
            page().keyboard().press(key);
        }
    }
}
