package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

class ThresholdWordsTest {

    @Test
    void aCellReadsAsInTheFile() {
        assertThat(Words.thresholdCell(Threshold.measured(25))).isEqualTo("25");
        assertThat(Words.thresholdCell(Threshold.measured(-10))).isEqualTo("-10");
        assertThat(Words.thresholdCell(Threshold.noResponseAt(95))).isEqualTo(">95");
        assertThat(Words.thresholdCell(Threshold.noResponse())).isEqualTo("NR");
    }

    @Test
    void aSentenceCarriesTheUnit() {
        assertThat(Words.threshold(Threshold.measured(25))).isEqualTo("25 dB HL");
        assertThat(Words.threshold(Threshold.noResponseAt(95))).isEqualTo("no response at 95 dB HL");
        assertThat(Words.threshold(Threshold.noResponse())).isEqualTo("no response, level not given");
    }

    @Test
    void whatWasNotTestedIsSaidAndNeverANumber() {
        for (Reason reason : Reason.values()) {
            String words = reason == Reason.COULD_NOT_TEST ? "could not be tested" : "not tested";
            assertThat(Words.thresholdCell(Threshold.notTested(reason))).isEqualTo(words);
            assertThat(Words.threshold(Threshold.notTested(reason))).isEqualTo(words);
        }
    }
}
