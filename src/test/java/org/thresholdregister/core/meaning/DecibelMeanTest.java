package org.thresholdregister.core.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;

class DecibelMeanTest {

    private static DecibelMean mean(int sum, int count) {
        return new DecibelMean(DecibelRange.exactly(sum), count);
    }

    @Test
    void theLimitItselfIsAtLeastItAndNotAboveIt() {
        assertThat(mean(100, 4).isAtLeast(25)).isEqualTo(Answer.YES);
        assertThat(mean(100, 4).isAbove(25)).isEqualTo(Answer.NO);
        assertThat(mean(101, 4).isAbove(25)).isEqualTo(Answer.YES);
        assertThat(mean(99, 4).isAtLeast(25)).isEqualTo(Answer.NO);
    }

    @Test
    void bothEarsAreOneMeanOfTwiceAsManyNumbers() {
        List<Frequency> frequencies = List.of(Frequency.HZ_500, Frequency.HZ_1000);
        var test = Audiograms.of("10 20", "30 45");
        assertThat(DecibelMean.level(test, Ear.RIGHT, frequencies)).isEqualTo(mean(75, 2));
        assertThat(DecibelMean.levelOfBothEars(test, frequencies)).isEqualTo(mean(105, 4));
    }

    @Test
    void meansOfDifferentNumbersAreNotCompared() {
        assertThatIllegalArgumentException().isThrownBy(() -> mean(10, 2).minus(mean(10, 3)));
        assertThatIllegalArgumentException().isThrownBy(() -> mean(10, 2).min(mean(10, 3)));
        assertThatIllegalArgumentException().isThrownBy(() -> mean(0, 0));
    }

    @Test
    void aMissingThresholdLeavesTheMeanOpen() {
        var test = Audiograms.of("10 -", ">95 10");
        List<Frequency> frequencies = List.of(Frequency.HZ_500, Frequency.HZ_1000);
        assertThat(DecibelMean.level(test, Ear.LEFT, frequencies).sum()).isEqualTo(DecibelRange.UNKNOWN);
        assertThat(DecibelMean.level(test, Ear.RIGHT, frequencies).sum()).isEqualTo(DecibelRange.atLeast(110));
        assertThat(DecibelMean.level(test, Ear.RIGHT, frequencies).isAtLeast(55))
                .isEqualTo(Answer.YES);
        assertThat(DecibelMean.level(test, Ear.RIGHT, frequencies).isAtLeast(56))
                .isEqualTo(Answer.UNDECIDED);
    }
}
