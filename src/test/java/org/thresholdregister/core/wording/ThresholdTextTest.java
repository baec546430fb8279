package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

class ThresholdTextTest {

    @Test
    void theBriefFormIsTheOneOfTheFile() {
        assertThat(ThresholdText.brief(Threshold.measured(25))).isEqualTo("25");
        assertThat(ThresholdText.brief(Threshold.measured(-10))).isEqualTo("-10");
        assertThat(ThresholdText.brief(Threshold.noResponseAt(95))).isEqualTo(">95");
        assertThat(ThresholdText.brief(Threshold.noResponse())).isEqualTo("NR");
    }

    @Test
    void theFullFormCarriesItsUnit() {
        assertThat(ThresholdText.full(Threshold.measured(25))).isEqualTo("25 dB HL");
        assertThat(ThresholdText.full(Threshold.noResponseAt(95))).isEqualTo("no response at 95 dB HL");
        assertThat(ThresholdText.full(Threshold.noResponse())).isEqualTo("no response, level not given");
    }

    @Test
    void whatWasNotTestedIsSaidAndNeverANumber() {
        for (Reason reason : Reason.values()) {
            String words = reason == Reason.COULD_NOT_TEST ? "could not test" : "not tested";
            assertThat(ThresholdText.brief(Threshold.notTested(reason))).isEqualTo(words);
            assertThat(ThresholdText.full(Threshold.notTested(reason))).isEqualTo(words);
        }
    }
}
