package org.thresholdregister.core.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/** Definitions and ranges of ANSI/ASA S12.13 TR-2002, from memory; the shares by chance are computed from the normal curve. */
class TestToTestTest {

    private static final Audiogram FIRST = Vectors.flat(LocalDate.of(2025, 3, 3), TestPurpose.ANNUAL, 10, 10);
    private static final Audiogram SAME = Vectors.flat(LocalDate.of(2026, 3, 2), TestPurpose.ANNUAL, 10, 10);

    private static TestPair to(Ear ear, Frequency frequency, int level) {
        return new TestPair(FIRST, SAME.with(ear, frequency, Threshold.measured(level)));
    }

    @Test
    void fifteenDecibelsAtOneFrequencyOfOneEarAreWorse() {
        assertThat(to(Ear.RIGHT, Frequency.HZ_6000, 25).isWorse()).isTrue();
        assertThat(to(Ear.RIGHT, Frequency.HZ_6000, 24).isWorse()).isFalse();
        assertThat(to(Ear.LEFT, Frequency.HZ_500, 25).isWorseOrBetter()).isTrue();
    }

    @Test
    void betterAloneIsAChangeButNotWorse() {
        assertThat(to(Ear.LEFT, Frequency.HZ_500, -5).isWorse()).isFalse();
        assertThat(to(Ear.LEFT, Frequency.HZ_500, -5).isWorseOrBetter()).isTrue();
        assertThat(to(Ear.LEFT, Frequency.HZ_500, -4).isWorseOrBetter()).isFalse();
    }

    @Test
    void eightThousandHertzIsNotCompared() {
        assertThat(to(Ear.LEFT, Frequency.HZ_8000, 90).isWorse()).isFalse();
        assertThat(new TestPair(FIRST, SAME.with(Ear.LEFT, Frequency.HZ_8000, Threshold.notGiven())).isComplete())
                .isTrue();
    }

    @Test
    void aPairThatLacksANumberIsCountedNowhere() {
        var lacking = new TestPair(FIRST, SAME.with(Ear.LEFT, Frequency.HZ_500, Threshold.noResponseAt(95)));
        var found = TestToTest.of(List.of(lacking, to(Ear.LEFT, Frequency.HZ_500, 25), new TestPair(FIRST, SAME)));
        assertThat(found.pairs()).isEqualTo(2);
        assertThat(found.incomplete()).isEqualTo(1);
        assertThat(found.worse()).isEqualTo(1);
        assertThat(found.worseOfPairs().orElseThrow().percent()).isEqualTo(50);
    }

    @Test
    void withoutPairsThereIsNoShare() {
        var found = TestToTest.of(List.of());
        assertThat(found.worseOfPairs()).isEmpty();
        assertThat(found.worseOrBetterOfPairs()).isEmpty();
        assertThat(found.low().left()).isEmpty();
        assertThat(found.hasEnoughPeople()).isFalse();
    }

    @Test
    void theSpreadIsOfThePeoplesMeanChanges() {
        // Mean changes over 3000, 4000 and 6000 Hz of the left ear: 0 and 5 dB.
        var found = TestToTest.of(List.of(new TestPair(FIRST, SAME), to(Ear.LEFT, Frequency.HZ_4000, 25)));
        assertThat(found.high().left().orElseThrow()).isCloseTo(5 / Math.sqrt(2), within(1e-9));
        assertThat(found.high().of(Ear.RIGHT).orElseThrow()).isZero();
        assertThat(found.low().left().orElseThrow()).isZero();
    }

    @Test
    void theRangesTakeTheirEndsAsMarginal() {
        assertThat(Stream.of(16.99, 17.0, 27.0, 27.01).map(RatingRange.WORSE::of))
                .containsExactly(Rating.ACCEPTABLE, Rating.MARGINAL, Rating.MARGINAL, Rating.UNACCEPTABLE);
        assertThat(Stream.of(25.99, 26.0, 40.0, 40.01).map(RatingRange.WORSE_OR_BETTER::of))
                .containsExactly(Rating.ACCEPTABLE, Rating.MARGINAL, Rating.MARGINAL, Rating.UNACCEPTABLE);
        assertThatIllegalArgumentException().isThrownBy(() -> new RatingRange(2, 1));
    }

    /** With independent errors in steps of 5 dB, chance alone makes 7.2, 20.2 and 36.4 % worse somewhere. */
    @Test
    void chanceAloneMakesManyWorse() {
        assertThat(worseByChance(5)).isCloseTo(7.2, within(0.6));
        assertThat(worseByChance(6)).isCloseTo(20.2, within(0.9));
        assertThat(worseByChance(7)).isCloseTo(36.4, within(1.1));
    }

    private static double worseByChance(double deviation) {
        var random = new Random(512);
        Audiogram earlier = everywhere(40);
        List<TestPair> pairs = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            Audiogram later = earlier;
            for (Ear ear : Ear.values()) {
                for (Frequency frequency : TestPair.COMPARED) {
                    int change = (int) (5 * Math.round(random.nextGaussian() * deviation / 5));
                    later = later.with(ear, frequency, Threshold.measured(40 + change));
                }
            }
            pairs.add(new TestPair(earlier, later));
        }
        return TestToTest.of(pairs).worseOfPairs().orElseThrow().percent();
    }

    private static Audiogram everywhere(int level) {
        var audiogram = new Audiogram.Builder(LocalDate.of(2025, 3, 3), TestPurpose.ANNUAL);
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                audiogram.set(ear, frequency, Threshold.measured(level));
            }
        }
        return audiogram.build();
    }

    @Test
    void retestsAndOtherTestsAreNotInTheSequence() {
        var retest = Vectors.flat(LocalDate.of(2025, 3, 20), TestPurpose.RETEST, 10, 10);
        var other = Vectors.flat(LocalDate.of(2025, 4, 20), TestPurpose.OTHER, 10, 10);
        var member = Member.of(List.of(SAME, retest, other, FIRST), false);
        assertThat(member.tests()).containsExactly(FIRST, SAME);
        assertThat(member.pairs()).containsExactly(new TestPair(FIRST, SAME));
    }

    @Test
    void theRestrictedDatabaseSaysWhomItLeavesOut() {
        List<Member> people = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            people.add(Member.of(years(4 + i, 10), false));
        }
        people.add(Member.of(years(3, 10), true));
        people.add(Member.of(years(2, 10), false));
        var database = RestrictedDatabase.of(people, 4);
        assertThat(database.members()).isEqualTo(3);
        assertThat(database.successive()).hasSize(3).allMatch(each -> each.pairs() == 3 && each.worse() == 0);
        assertThat(database.excluded()).isEqualTo(2);
        assertThat(database.shiftsOfExcluded().orElseThrow().percent()).isEqualTo(50);
        assertThat(database.shiftsOfMembers().orElseThrow().count()).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> RestrictedDatabase.of(people, 3));
    }

    @Test
    void someoneWithAGapInTheFirstTestsIsLeftOut() {
        List<Audiogram> tests = new ArrayList<>(years(4, 10));
        tests.set(2, tests.get(2).with(Ear.RIGHT, Frequency.HZ_3000, Threshold.noResponse()));
        var database = RestrictedDatabase.of(List.of(Member.of(tests, false)), 4);
        assertThat(database.members()).isZero();
        assertThat(database.excluded()).isEqualTo(1);
        assertThat(database.shiftsOfMembers()).isEmpty();
    }

    private static List<Audiogram> years(int count, int level) {
        return Stream.iterate(2018, year -> year + 1)
                .limit(count)
                .map(year -> Vectors.flat(LocalDate.of(year, 3, 3), TestPurpose.ANNUAL, level, level))
                .toList();
    }
}
