package org.thresholdregister.core.shift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.thresholdregister.core.audiometry.Frequency.HZ_1000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_2000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_3000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_4000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_6000;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;

class ShiftCriterionTest {

    private static final List<Frequency> FOUR = List.of(HZ_1000, HZ_2000, HZ_3000, HZ_4000);

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 5})
    void asManyNeighboursAsThereCannotBeAreRefused(int count) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShiftCriterion.Neighbours(FOUR, count, Limit.atLeast(15)))
                .withMessage(count + " neighbours among 4 frequencies");
    }

    @Test
    void asFewAsOneAndAsManyAsAllNeighboursAreTaken() {
        Function<Frequency, DecibelRange> onlyTheLast = changes(0, 0, 0, 15);
        assertThat(new ShiftCriterion.Neighbours(FOUR, 1, Limit.atLeast(15)).metBy(onlyTheLast))
                .isEqualTo(Answer.YES);
        assertThat(new ShiftCriterion.Neighbours(FOUR, 4, Limit.atLeast(15)).metBy(onlyTheLast))
                .isEqualTo(Answer.NO);
        assertThat(new ShiftCriterion.Neighbours(FOUR, 4, Limit.atLeast(15)).metBy(changes(15, 15, 15, 15)))
                .isEqualTo(Answer.YES);
    }

    @ParameterizedTest
    @CsvSource({
        "15, 15, 0, 0, YES",
        "0, 15, 15, 0, YES",
        "0, 0, 15, 15, YES",
        "15, 14, 0, 0, NO",
        "15, 0, 15, 0, NO",
        "15, 0, 0, 15, NO",
    })
    void twoNeighboursHaveToReachTheLimit(int at1000, int at2000, int at3000, int at4000, Answer answer) {
        assertThat(new ShiftCriterion.Neighbours(FOUR, 2, Limit.atLeast(15))
                        .metBy(changes(at1000, at2000, at3000, at4000)))
                .isEqualTo(answer);
    }

    @Test
    void severalCriteriaTogetherLookAtEachFrequencyOnceFromLowToHigh() {
        ShiftCriterion either = new ShiftCriterion.AnyOf(List.of(
                new ShiftCriterion.AnyFrequency(List.of(HZ_4000, HZ_6000), Limit.atLeast(25), Direction.WORSE),
                new ShiftCriterion.Mean(List.of(HZ_1000, HZ_4000), Limit.atLeast(10), Direction.WORSE)));
        assertThat(either.frequencies()).containsExactly(HZ_1000, HZ_4000, HZ_6000);
    }

    @Test
    void aCriterionOfBetterHearingLooksTheOtherWay() {
        ShiftCriterion.AnyFrequency better = new ShiftCriterion.AnyFrequency(FOUR, Limit.atLeast(10), Direction.BETTER);
        assertThat(better.metBy(changes(0, 0, -10, 0))).isEqualTo(Answer.YES);
        assertThat(better.metBy(changes(10, 10, -9, 10))).isEqualTo(Answer.NO);
    }

    private static Function<Frequency, DecibelRange> changes(int... decibels) {
        Map<Frequency, DecibelRange> byFrequency = new EnumMap<>(Frequency.class);
        for (int i = 0; i < decibels.length; i++) {
            byFrequency.put(FOUR.get(i), DecibelRange.exactly(decibels[i]));
        }
        return byFrequency::get;
    }
}
