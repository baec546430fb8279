package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.followup.FollowUpKind;

class CountedTest {

    @Test
    void oneIsSingular() {
        assertThat(Counted.followUps(FollowUpKind.NOTICE, 1)).isEqualTo("1 written notice");
        assertThat(Counted.followUps(FollowUpKind.RETEST, 3)).isEqualTo("3 optional retests");
        assertThat(Counted.followUps(FollowUpKind.ANNUAL_TEST, 0)).isEqualTo("0 annual tests");
        assertThat(Counted.of(12_345, "worker", "workers")).isEqualTo("12,345 workers");
    }

    @Test
    void daysAreLeftUntilTheDayItself() {
        assertThat(Counted.daysLeft(12)).isEqualTo("12 days left");
        assertThat(Counted.daysLeft(1)).isEqualTo("1 day left");
        assertThat(Counted.daysLeft(0)).isEqualTo("due today");
        assertThat(Counted.daysLeft(-1)).isEqualTo("1 day overdue");
        assertThat(Counted.daysLeft(-5)).isEqualTo("5 days overdue");
    }

    @Test
    void aListingIsJoinedAsItIsSpoken() {
        List<String> parts = List.of("a", "b", "c");
        var spoken = new StringBuilder();
        for (int i = 0; i < parts.size(); i++) {
            spoken.append(parts.get(i)).append(Counted.joint(i, parts));
        }
        assertThat(spoken).hasToString("a, b and c");
    }
}
