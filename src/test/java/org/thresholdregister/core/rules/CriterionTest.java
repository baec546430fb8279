package org.thresholdregister.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.Direction;
import org.thresholdregister.core.shift.Limit;
import org.thresholdregister.core.shift.ShiftCriterion;

class CriterionTest {

    private static final LocalDate FIRST = LocalDate.parse("2022-03-09");
    private static final Audiogram BASELINE = annual(0, 10);
    private static final Criterion.Persistent TWICE = new Criterion.Persistent(
            new ShiftCriterion.AnyFrequency(Frequency.AVERAGED, Limit.atLeast(15), Direction.WORSE), 2);

    @Test
    void oneTestAfterTheBaselineNeverPersists() {
        assertThat(answer(TWICE, BASELINE, List.of(BASELINE), annual(1, 25))).isEqualTo(Answer.NO);
    }

    /** The baseline is no test that runs before: what is missing in it leaves nothing open on the first test. */
    @Test
    void theBaselineIsNoneOfTheTestsThatPersist() {
        Audiogram incomplete = BASELINE.with(Ear.LEFT, Frequency.HZ_2000, Threshold.notGiven());
        assertThat(answer(TWICE, incomplete, List.of(incomplete), annual(1, 25)))
                .isEqualTo(Answer.NO);
    }

    @Test
    void aTestBeforeTheBaselineIsNoneOfTheTestsThatPersist() {
        Audiogram incomplete = annual(-1, 25).with(Ear.LEFT, Frequency.HZ_2000, Threshold.notGiven());
        assertThat(answer(TWICE, BASELINE, List.of(incomplete), annual(1, 25))).isEqualTo(Answer.NO);
        assertThat(answer(TWICE, BASELINE, List.of(annual(-1, 25)), annual(1, 25)))
                .isEqualTo(Answer.NO);
    }

    @Test
    void theTestBeforeHasToShowTheShiftToo() {
        assertThat(answer(TWICE, BASELINE, List.of(BASELINE, annual(1, 25)), annual(2, 25)))
                .isEqualTo(Answer.YES);
        assertThat(answer(TWICE, BASELINE, List.of(BASELINE, annual(1, 24)), annual(2, 25)))
                .isEqualTo(Answer.NO);
        assertThat(answer(TWICE, BASELINE, List.of(BASELINE, annual(1, 25), annual(2, 24)), annual(3, 25)))
                .isEqualTo(Answer.NO);
    }

    @Test
    void aReadingKeepsTheNumbersOfEachOfSeveralCriteria() {
        Criterion.FromBaseline either = new Criterion.FromBaseline(new ShiftCriterion.AnyOf(List.of(
                new ShiftCriterion.Mean(Frequency.AVERAGED, Limit.atLeast(10), Direction.WORSE),
                new ShiftCriterion.AnyFrequency(Frequency.AVERAGED, Limit.atLeast(25), Direction.WORSE),
                new ShiftCriterion.Neighbours(Frequency.AVERAGED, 2, Limit.atLeast(15)))));
        Audiogram test = annual(1, 20).with(Ear.LEFT, Frequency.HZ_3000, Threshold.measured(26));
        assertThat(either.read(seen(BASELINE, List.of(BASELINE), test), Ear.LEFT)
                        .orElseThrow()
                        .quantities())
                .extracting(Quantity::of, Quantity::total)
                .containsExactly(
                        tuple(Quantity.Kind.CHANGES, DecibelRange.exactly(36)),
                        tuple(Quantity.Kind.LARGEST_CHANGE, DecibelRange.exactly(16)),
                        tuple(Quantity.Kind.LARGEST_CHANGE, DecibelRange.exactly(16)));
    }

    private static Answer answer(
            Criterion.OfEar criterion, Audiogram baseline, List<Audiogram> earlier, Audiogram test) {
        return criterion
                .read(seen(baseline, earlier, test), Ear.LEFT)
                .orElseThrow()
                .answer();
    }

    private static TestSeen seen(Audiogram baseline, List<Audiogram> earlier, Audiogram test) {
        return new TestSeen(
                test,
                PerEar.from(ear -> Optional.of(baseline)),
                PerEar.from(ear -> earlier),
                Optional.empty(),
                Optional.empty());
    }

    private static Audiogram annual(int year, int decibels) {
        return Vectors.flat(FIRST.plusYears(year), TestPurpose.ANNUAL, decibels, 10);
    }
}
