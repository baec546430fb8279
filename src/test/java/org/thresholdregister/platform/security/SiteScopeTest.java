package org.thresholdregister.platform.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;

class SiteScopeTest {

    @Test
    void allSitesIncludesEverySiteAndNone() {
        assertThat(SiteScope.all().includes("North Works")).isTrue();
        assertThat(SiteScope.all().includes(null)).isTrue();
    }

    @Test
    void namedSitesIncludeThemselvesOnly() {
        var scope = SiteScope.only(Set.of("North Works"));
        assertThat(scope.includes("North Works")).isTrue();
        assertThat(scope.includes("South Works")).isFalse();
        assertThat(scope.includes(null)).isFalse();
    }

    @Test
    void anEmptyScopeIncludesNothing() {
        assertThat(SiteScope.only(Set.of()).includes("North Works")).isFalse();
    }
}
