package org.thresholdregister.core.followup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.rules.Step;

class FollowUpKindTest {

    /** 29 CFR 1910.95(g) and 1904.10: the paragraph that makes each duty due, and the word in files. */
    @ParameterizedTest
    @CsvSource({
        "RETEST, retest, RETEST, 29 CFR 1910.95(g)(7)(ii)",
        "NOTICE, notice, NOTICE, 29 CFR 1910.95(g)(8)(i)",
        "RECORD, record, RECORDING_DEADLINE, 29 CFR 1904.10(b)(4)",
        "ANNUAL_TEST, annual-test, PERIODIC_TEST, 29 CFR 1910.95(g)(6)",
        "BASELINE_TEST, baseline-test, BASELINE, 29 CFR 1910.95(g)(5)(i)"
    })
    void eachDutyRestsOnAParagraph(FollowUpKind kind, String word, Step step, String place) {
        assertThat(kind.word()).isEqualTo(word);
        assertThat(kind.step()).isEqualTo(step);
        assertThat(RuleSets.OSHA.paragraph(kind.step()).place()).contains(place);
    }
}
