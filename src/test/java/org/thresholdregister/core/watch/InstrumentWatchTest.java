package org.thresholdregister.core.watch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/**
 * Rates are of {@link InventedPlant}, not of any real one. What is asked of the watch: a bias of 5 dB in one headset is
 * found within 20 tests (median of 200 plants) at fewer than one false signal in 1000 tests.
 */
class InstrumentWatchTest {

    private static final int FAULT_FROM = 600;
    private static final InventedPlant.Fault NONE = (ear, frequency) -> 0;

    @Test
    void aFaultlessPlantIsSeldomSuspected() {
        int signals = 0;
        int tests = 0;
        for (long seed = 0; seed < 40; seed++) {
            List<WatchedTest> all = new InventedPlant(seed).tests(10, Integer.MAX_VALUE, NONE);
            signals += suspicions(all).size();
            tests += all.size();
        }
        assertThat(1000.0 * signals / tests).isBetween(0.1, 0.7);
    }

    @Test
    void aHeadsetFiveDecibelsTooHighIsFoundWithinTwentyTests() {
        List<Integer> found = testsUntilFound(200, (ear, frequency) -> 5);
        assertThat(share(found, 0.5)).isBetween(5, 14);
        assertThat(share(found, 0.9)).isLessThanOrEqualTo(25);
    }

    @Test
    void oneTooLowIsFoundWithinTwentyTestsToo() {
        assertThat(share(testsUntilFound(50, (ear, frequency) -> -5), 0.5)).isBetween(8, 20);
    }

    @Test
    void aBiasOfOneEarphoneOrOfTheHighFrequenciesIsFoundWithinTwentyTestsToo() {
        assertThat(share(testsUntilFound(50, (ear, frequency) -> ear == Ear.LEFT ? 5 : 0), 0.5))
                .isBetween(6, 18);
        assertThat(share(
                        testsUntilFound(
                                50, (ear, frequency) -> frequency.hertz() > 2000 && frequency.hertz() < 8000 ? 5 : 0),
                        0.5))
                .isBetween(6, 18);
    }

    @Test
    void tenDecibelsAtOneFrequencyOfOneEarphoneAreFound() {
        assertThat(share(
                        testsUntilFound(
                                50, (ear, frequency) -> ear == Ear.RIGHT && frequency == Frequency.HZ_4000 ? 10 : 0),
                        0.5))
                .isBetween(4, 14);
    }

    private static List<Suspicion> suspicions(List<WatchedTest> tests) {
        return InstrumentWatch.suspicions(tests, WatchSettings.USUAL);
    }

    private static int share(List<Integer> found, double share) {
        return found.stream().sorted().toList().get((int) (share * found.size()));
    }

    /** Tests on the unit from the first faulty one to the signal; a fault that is never signalled counts as endless. */
    private static List<Integer> testsUntilFound(int plants, InventedPlant.Fault fault) {
        List<Integer> found = new ArrayList<>();
        for (long seed = 1000; seed < 1000 + plants; seed++) {
            List<WatchedTest> all = new InventedPlant(seed).tests(5, FAULT_FROM, fault);
            List<LocalDate> days = all.stream()
                    .filter(test -> test.unit().equals(InventedPlant.WATCHED))
                    .sorted(WatchedTest.IN_ORDER)
                    .map(test -> test.test().date())
                    .toList();
            LocalDate faulty = days.get(FAULT_FROM);
            Optional<Suspicion> signal = suspicions(all).stream()
                    .filter(one -> one.unit().equals(InventedPlant.WATCHED)
                            && !one.signalledOn().isBefore(faulty))
                    .findFirst();
            found.add(signal.map(one -> (int) days.stream()
                            .filter(day -> !day.isBefore(faulty) && !day.isAfter(one.signalledOn()))
                            .count())
                    .orElse(Integer.MAX_VALUE));
        }
        return found;
    }

    @Test
    void theBiasIsEstimatedAndTheTestsAreNamed() {
        List<WatchedTest> all = new InventedPlant(3).tests(5, FAULT_FROM, (ear, frequency) -> 10);
        Suspicion suspicion = suspicions(all).getLast();
        assertThat(suspicion.until()).isEmpty();
        assertThat(suspicion.signs().getFirst().channel()).isEqualTo(Channel.ALL.getFirst());
        assertThat(suspicion.signs().getFirst().biasDb()).isCloseTo(10, within(2.5));
        assertThat(suspicion.tests()).allMatch(test -> test.unit().equals(InventedPlant.WATCHED));
        assertThat(suspicion.tests().getFirst().test().date()).isEqualTo(suspicion.from());
        assertThat(suspicion.testsUntilSignal())
                .isLessThanOrEqualTo(suspicion.tests().size());
    }

    @Test
    void theSuspicionEndsWhenTheFaultIsMended() {
        List<WatchedTest> all = new InventedPlant(5).tests(6, FAULT_FROM, (ear, frequency) -> 10);
        List<WatchedTest> watched = all.stream()
                .filter(test -> test.unit().equals(InventedPlant.WATCHED))
                .sorted(WatchedTest.IN_ORDER)
                .toList();
        LocalDate mended = watched.get(FAULT_FROM + 40).test().date();
        List<WatchedTest> once = new ArrayList<>();
        List<WatchedTest> sound = new InventedPlant(5).tests(6, Integer.MAX_VALUE, NONE);
        for (int i = 0; i < all.size(); i++) {
            once.add(all.get(i).test().date().isBefore(mended) ? all.get(i) : sound.get(i));
        }
        Suspicion suspicion = suspicions(once).getLast();
        assertThat(suspicion.until())
                .hasValueSatisfying(day -> assertThat(day).isBetween(mended.minusDays(10), mended.plusDays(10)));
    }

    @Test
    void theOrderInWhichTestsAreGivenDoesNotMatter() {
        List<WatchedTest> all = new ArrayList<>(new InventedPlant(7).tests(5, FAULT_FROM, (ear, frequency) -> 5));
        List<Suspicion> inOrder = suspicions(all);
        Collections.shuffle(all, new Random(7));
        assertThat(inOrder).isNotEmpty();
        assertThat(suspicions(all)).isEqualTo(inOrder);
    }

    @Test
    void withoutEarlierTestsOrUnitNothingIsSaid() {
        List<WatchedTest> all = new InventedPlant(9).tests(1, 0, (ear, frequency) -> 20);
        assertThat(suspicions(all)).isEmpty();
        List<WatchedTest> nameless = new InventedPlant(9)
                .tests(5, FAULT_FROM, (ear, frequency) -> 20).stream()
                        .map(test -> new WatchedTest(" ", test.worker(), test.test()))
                        .toList();
        assertThat(suspicions(nameless)).isEmpty();
    }

    @Test
    void missingThresholdsAndNoResponsesAreLeftOut() {
        List<WatchedTest> all = new InventedPlant(11)
                .tests(5, FAULT_FROM, NONE).stream()
                        .map(test -> new WatchedTest(
                                test.unit(),
                                test.worker(),
                                test.test()
                                        .with(Ear.LEFT, Frequency.HZ_6000, Threshold.noResponseAt(95))
                                        .with(Ear.LEFT, Frequency.HZ_8000, Threshold.notGiven())))
                        .toList();
        assertThat(suspicions(all).stream()
                        .flatMap(one -> one.signs().stream())
                        .map(Suspicion.Sign::channel)
                        .filter(channel -> channel.ears().equals(List.of(Ear.LEFT)))
                        .filter(channel -> channel.frequencies().equals(List.of(Frequency.HZ_6000))
                                || channel.frequencies().equals(List.of(Frequency.HZ_8000))))
                .isEmpty();
    }

    @Test
    void aRarerFalseSignalAsksForAHigherLimit() {
        assertThat(CumulativeSum.limitFor(0.5, 1000)).isBetween(4.5, 6.5);
        assertThat(CumulativeSum.limitFor(0.5, 10_000)).isGreaterThan(CumulativeSum.limitFor(0.5, 1000));
        assertThatIllegalArgumentException().isThrownBy(() -> new WatchSettings(0, 2000));
        assertThatIllegalArgumentException().isThrownBy(() -> new WatchSettings(5, 99));
    }
}
