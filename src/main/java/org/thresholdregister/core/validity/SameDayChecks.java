package org.thresholdregister.core.validity;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.validity.SameDayTests.OthersTest;
import org.thresholdregister.core.validity.ValidityFlag.LooksLikeAnotherWorkers;
import org.thresholdregister.core.validity.ValidityFlag.RoomNoise;

/** A test beside those of others on the same day. */
final class SameDayChecks {

    /** From this mean difference on, in dB, a test does not look like the worker's own. */
    private static final int NOT_THEIR_OWN_FROM_DB = 10;

    /** By how much each of two tests must fit the other worker better, in mean dB, to look exchanged. */
    private static final int EXCHANGE_MARGIN_DB = 6;

    /** By how much a test must fit another worker better, in mean dB, where theirs is left out of account. */
    private static final int LIKENESS_MARGIN_DB = 10;

    /** A rise at 500 Hz against the usual, in both ears, that room noise may make. */
    private static final int RAISED_FROM_DB = 10;

    /** With fewer people nothing is said of the room. */
    private static final int FEWEST_RAISED = 3;

    private SameDayChecks() {}

    static boolean isUnlikeOwn(Audiogram test, UsualHearing usual) {
        Set<Frequency> frequencies = Fit.comparable(test, usual.thresholds());
        return Fit.areEnough(frequencies)
                && Fit.of(test, usual.thresholds(), frequencies).isAtLeast(NOT_THEIR_OWN_FROM_DB);
    }

    /**
     * Whether the test looks like another worker's of the day. It lies {@value #NOT_THEIR_OWN_FROM_DB} dB or more in the
     * mean from the worker's own usual thresholds, and closer to the other's: by {@value #EXCHANGE_MARGIN_DB} dB or more
     * and at most two thirds as far, with the other's test of the day closer to this worker in the same way, or else by
     * {@value #LIKENESS_MARGIN_DB} dB or more and at most half as far. Of several others those with an exchange come
     * first, then the closest.
     *
     * <p>Measured on 6,000 invented workers, about nine a day at a site ({@code ValidityRatesTest}): 2 false alarms of an
     * exchange and 55 of a mere likeness in 42,959 tests; of exchanged tests 20 in 100 found as an exchange where the two
     * differ by a mean of 8 to 12 dB, 79 from 12 to 16 dB, 94 from 16 to 20 dB, 97 and more from 20 dB on, and none under
     * 8 dB: people who hear alike cannot be told apart.
     */
    static Optional<ValidityFlag> looksLikeAnotherWorkers(Audiogram test, UsualHearing own, List<OthersTest> others) {
        return others.stream()
                .flatMap(other -> compare(test, own, other).stream())
                .min(Comparator.comparing((LooksLikeAnotherWorkers flag) -> !flag.exchangedWithTheirs())
                        .thenComparingInt(flag -> flag.others().meanTenths())
                        .thenComparing(LooksLikeAnotherWorkers::otherWorkerId))
                .map(Function.identity());
    }

    private static Optional<LooksLikeAnotherWorkers> compare(Audiogram test, UsualHearing own, OthersTest other) {
        return UsualHearing.around(other.test(), other.otherTests()).flatMap(theirs -> {
            Set<Frequency> frequencies = Fit.comparable(test, own.thresholds(), theirs.thresholds());
            if (!Fit.areEnough(frequencies)) {
                return Optional.empty();
            }
            Fit toOwn = Fit.of(test, own.thresholds(), frequencies);
            Fit toTheirs = Fit.of(test, theirs.thresholds(), frequencies);
            boolean exchanged = fitsBetter(test, theirs, own) && fitsBetter(other.test(), own, theirs);
            boolean alike = toTheirs.isCloserBy(LIKENESS_MARGIN_DB, toOwn) && toTheirs.isAtMostHalfOf(toOwn);
            return toOwn.isAtLeast(NOT_THEIR_OWN_FROM_DB) && (exchanged || alike)
                    ? Optional.of(new LooksLikeAnotherWorkers(other.workerId(), toOwn, toTheirs, exchanged))
                    : Optional.empty();
        });
    }

    /** Whether a test lies closer to the one worker than to the other, as far as an exchange would bring it. */
    private static boolean fitsBetter(Audiogram test, UsualHearing worker, UsualHearing than) {
        Set<Frequency> frequencies = Fit.comparable(test, worker.thresholds(), than.thresholds());
        Fit closer = Fit.of(test, worker.thresholds(), frequencies);
        Fit farther = Fit.of(test, than.thresholds(), frequencies);
        return Fit.areEnough(frequencies)
                && closer.isCloserBy(EXCHANGE_MARGIN_DB, farther)
                && closer.isAtMostTwoThirdsOf(farther);
    }

    /** Whether 500 Hz is raised by {@value #RAISED_FROM_DB} dB or more in both ears. */
    static boolean isRaised(Audiogram test, UsualHearing usual) {
        for (Ear ear : Ear.values()) {
            if (test.threshold(ear, Frequency.HZ_500)
                            .range()
                            .minus(usual.thresholds()
                                    .threshold(ear, Frequency.HZ_500)
                                    .range())
                            .isAtLeast(RAISED_FROM_DB)
                    != Answer.YES) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether the room may have been noisy: of those tested on the day whose usual hearing is known, half or more, and
     * {@value #FEWEST_RAISED} or more, are raised at 500 Hz in both ears.
     */
    static Optional<ValidityFlag> roomNoise(List<OthersTest> others) {
        int raised = 1;
        int compared = 1;
        for (OthersTest other : others) {
            Optional<UsualHearing> usual = UsualHearing.around(other.test(), other.otherTests());
            if (usual.isPresent()) {
                compared++;
                raised += isRaised(other.test(), usual.get()) ? 1 : 0;
            }
        }
        return raised >= FEWEST_RAISED && 2 * raised >= compared
                ? Optional.of(new RoomNoise(raised, compared))
                : Optional.empty();
    }
}
