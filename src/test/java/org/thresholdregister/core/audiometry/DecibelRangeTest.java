package org.thresholdregister.core.audiometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.IntBinaryOperator;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.regulation.Answer;

/**
 * The arithmetic of ranges against lists of their members. An open end is followed for {@value #REACH} dB, which is far
 * beyond every bound and every comparison that is tried here, and so stands for all that lies beyond.
 */
class DecibelRangeTest {

    private static final int REACH = 60;
    private static final int LARGEST_BOUND = 8;

    /** A range together with its members. */
    private record Sample(DecibelRange range, boolean openBelow, boolean openAbove, int[] members) {}

    @Test
    void aSumHoldsExactlyTheSumsOfTheMembers() {
        checkAgainstMembers(
                DecibelRange::plus,
                Integer::sum,
                (a, b) -> a.openBelow || b.openBelow,
                (a, b) -> a.openAbove || b.openAbove);
    }

    @Test
    void aDifferenceHoldsExactlyTheDifferencesOfTheMembers() {
        checkAgainstMembers(
                DecibelRange::minus,
                (a, b) -> a - b,
                (a, b) -> a.openBelow || b.openAbove,
                (a, b) -> a.openAbove || b.openBelow);
    }

    @Test
    void theLargerOfTwoHoldsTheLargerOfTheMembers() {
        checkAgainstMembers(
                DecibelRange::max,
                Math::max,
                (a, b) -> a.openBelow && b.openBelow,
                (a, b) -> a.openAbove || b.openAbove);
    }

    @Test
    void theSmallerOfTwoHoldsTheSmallerOfTheMembers() {
        checkAgainstMembers(
                DecibelRange::min,
                Math::min,
                (a, b) -> a.openBelow || b.openBelow,
                (a, b) -> a.openAbove && b.openAbove);
    }

    @Test
    void aMultipleHoldsTheMultiplesOfTheMembers() {
        checkAgainstMembers((a, b) -> a.times(3), (a, b) -> 3 * a, (a, b) -> a.openBelow, (a, b) -> a.openAbove);
    }

    @Test
    void aLimitCutsTheMembersOff() {
        checkAgainstMembers(
                (a, b) -> a.limitedTo(-2, 5), (a, b) -> Math.clamp(a, -2, 5), (a, b) -> false, (a, b) -> false);
    }

    private interface RangeOperator {
        DecibelRange apply(DecibelRange one, DecibelRange other);
    }

    private interface SampleTest {
        boolean test(Sample one, Sample other);
    }

    private static void checkAgainstMembers(
            RangeOperator operator, IntBinaryOperator onMembers, SampleTest openBelow, SampleTest openAbove) {
        Random random = new Random(20260309);
        for (int round = 0; round < 2_000; round++) {
            Sample one = sample(random);
            Sample other = sample(random);
            DecibelRange result = operator.apply(one.range, other.range);
            int[] members = Arrays.stream(one.members)
                    .flatMap(a -> Arrays.stream(other.members).map(b -> onMembers.applyAsInt(a, b)))
                    .toArray();
            boolean below = openBelow.test(one, other);
            boolean above = openAbove.test(one, other);
            String as = one.range + " with " + other.range;

            assertThat(result.lowest().isEmpty()).as(as).isEqualTo(below);
            assertThat(result.highest().isEmpty()).as(as).isEqualTo(above);
            if (!below) {
                assertThat(result.lowest())
                        .as(as)
                        .hasValue(Arrays.stream(members).min().orElseThrow());
            }
            if (!above) {
                assertThat(result.highest())
                        .as(as)
                        .hasValue(Arrays.stream(members).max().orElseThrow());
            }
            assertAnswersAgree(result, members, as);
        }
    }

    @Test
    void aComparisonIsYesOrNoExactlyWhereAllMembersAgree() {
        Random random = new Random(20260310);
        for (int round = 0; round < 2_000; round++) {
            Sample sample = sample(random);
            assertAnswersAgree(sample.range, sample.members, sample.range.toString());
        }
    }

    private static void assertAnswersAgree(DecibelRange range, int[] members, String as) {
        for (int criterion = -3 * LARGEST_BOUND; criterion <= 3 * LARGEST_BOUND; criterion++) {
            int limit = criterion;
            boolean all = Arrays.stream(members).allMatch(member -> member >= limit);
            boolean none = Arrays.stream(members).noneMatch(member -> member >= limit);
            assertThat(range.isAtLeast(criterion))
                    .as("%s at least %d", as, criterion)
                    .isEqualTo(all ? Answer.YES : none ? Answer.NO : Answer.UNDECIDED);
        }
    }

    @Test
    void rangesWithTheSameMembersAreEqual() {
        Random random = new Random(20260311);
        int equal = 0;
        for (int round = 0; round < 5_000; round++) {
            Sample one = sample(random);
            Sample other = sample(random);
            boolean same = Arrays.equals(one.members, other.members);
            assertThat(one.range.equals(other.range))
                    .as(one.range + " and " + other.range)
                    .isEqualTo(same);
            if (same) {
                assertThat(one.range).hasSameHashCodeAs(other.range);
                equal++;
            }
        }
        assertThat(equal).isPositive();
    }

    @Test
    void onlyAPlainNumberIsExact() {
        assertThat(DecibelRange.exactly(-7).exact()).hasValue(-7);
        assertThat(DecibelRange.atLeast(5).exact()).isEmpty();
        assertThat(DecibelRange.atMost(5).exact()).isEmpty();
        assertThat(DecibelRange.UNKNOWN.exact()).isEmpty();
        assertThat(DecibelRange.atLeast(5).minus(DecibelRange.atLeast(5))).isEqualTo(DecibelRange.UNKNOWN);
        assertThat(DecibelRange.exactly(5).minus(DecibelRange.atLeast(2))).isEqualTo(DecibelRange.atMost(3));
    }

    @Test
    void differentRangesSpreadOverHashCodes() {
        Set<Integer> hashes = new HashSet<>();
        for (int bound = -10; bound <= 120; bound++) {
            hashes.add(DecibelRange.exactly(bound).hashCode());
            hashes.add(DecibelRange.atLeast(bound).hashCode());
            hashes.add(DecibelRange.atMost(bound).hashCode());
        }
        assertThat(hashes).hasSizeGreaterThan(300);
    }

    @Test
    void anOpenEndIsShownAsOpen() {
        assertThat(DecibelRange.exactly(-5)).hasToString("-5 to -5 dB");
        assertThat(DecibelRange.atLeast(0)).hasToString("0 to .. dB");
        assertThat(DecibelRange.atMost(0)).hasToString(".. to 0 dB");
    }

    /** A plain number, a half-open range or any value at all: the only ranges that measurements give. */
    private static Sample sample(Random random) {
        int bound = random.nextInt(-LARGEST_BOUND, LARGEST_BOUND + 1);
        return switch (random.nextInt(4)) {
            case 0 -> new Sample(DecibelRange.exactly(bound), false, false, new int[] {bound});
            case 1 -> new Sample(DecibelRange.atLeast(bound), false, true, members(bound, REACH));
            case 2 -> new Sample(DecibelRange.atMost(bound), true, false, members(-REACH, bound));
            default -> new Sample(DecibelRange.UNKNOWN, true, true, members(-REACH, REACH));
        };
    }

    private static int[] members(int from, int to) {
        List<Integer> members = new ArrayList<>();
        for (int member = from; member <= to; member++) {
            members.add(member);
        }
        return members.stream().mapToInt(Integer::intValue).toArray();
    }
}
