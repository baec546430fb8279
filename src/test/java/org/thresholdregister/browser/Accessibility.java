package org.thresholdregister.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Set;

/** Accessibility as axe-core checks it. */
final class Accessibility {

    private static final Set<String> GRAVE = Set.of("serious", "critical");

    private Accessibility() {}

    /** Fails where the page breaks a rule in a way that axe-core calls serious or critical. */
    static void assertNothingGrave(Page page) {
        List<String> grave = new AxeBuilder(page)
                .analyze().getViolations().stream()
                        .filter(rule -> GRAVE.contains(rule.getImpact()))
                        .map(rule -> rule.getId() + " at "
                                + rule.getNodes().getFirst().getTarget())
                        .toList();
        assertThat(grave).as("serious and critical breaches").isEmpty();
    }
}
