package org.thresholdregister.core.validity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.validity.Tests.PLAIN;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

class FitTest {

    private static final Set<Frequency> ALL = EnumSet.allOf(Frequency.class);

    private static Audiogram test(String left, String right) {
        return Tests.audiogram("2022-03-01", TestPurpose.ANNUAL, left, right);
    }

    @Test
    void theDifferencesOfBothEarsAreAddedWithoutTheirSigns() {
        Audiogram usual = test("10 10 10 10 10 10 10", "20 20 20 20 20 20 20");
        Audiogram test = test("15 5 10 10 10 10 10", "20 20 20 20 20 20 50");

        assertThat(Fit.of(test, usual, ALL)).isEqualTo(new Fit(40, 14));
        assertThat(Fit.ofExchanged(test, usual, ALL)).isEqualTo(new Fit(6 * 10 + 40 + 5 + 15 + 5 * 10, 14));
    }

    @Test
    void noResponseDiffersByAsLittleAsItMay() {
        Audiogram silent = test(PLAIN.replace("20", ">95"), PLAIN);

        assertThat(Fit.of(silent, test(PLAIN, PLAIN), ALL)).isEqualTo(new Fit(80, 14));
        assertThat(Fit.of(test(PLAIN, PLAIN), silent, ALL)).isEqualTo(new Fit(80, 14));
        assertThat(Fit.of(silent, silent, ALL)).isEqualTo(new Fit(0, 14));
        assertThat(Fit.of(silent, test(PLAIN.replace("20", "120"), PLAIN), ALL)).isEqualTo(new Fit(0, 14));
    }

    @Test
    void onlyFrequenciesWithSomethingInBothEarsOfAllAreCompared() {
        assertThat(Fit.comparable(test("10 NR 10 15 20 15 10", PLAIN), test(PLAIN, "10 5 DNT 15 >95 15 -")))
                .containsExactlyInAnyOrder(Frequency.HZ_500, Frequency.HZ_3000, Frequency.HZ_4000, Frequency.HZ_6000);
        assertThat(Fit.areEnough(EnumSet.range(Frequency.HZ_500, Frequency.HZ_3000)))
                .isTrue();
        assertThat(Fit.areEnough(EnumSet.range(Frequency.HZ_500, Frequency.HZ_2000)))
                .isFalse();
    }

    @Test
    void limitsAreMetExactly() {
        assertThat(new Fit(140, 14).isAtLeast(10)).isTrue();
        assertThat(new Fit(139, 14).isAtLeast(10)).isFalse();
        assertThat(new Fit(84, 14).isCloserBy(4, new Fit(140, 14))).isTrue();
        assertThat(new Fit(85, 14).isCloserBy(4, new Fit(140, 14))).isFalse();
        assertThat(new Fit(100, 14).isAtMostTwoThirdsOf(new Fit(150, 14))).isTrue();
        assertThat(new Fit(101, 14).isAtMostTwoThirdsOf(new Fit(150, 14))).isFalse();
        assertThat(new Fit(75, 14).isAtMostHalfOf(new Fit(150, 14))).isTrue();
        assertThat(new Fit(76, 14).isAtMostHalfOf(new Fit(150, 14))).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"0, 14, 0", "14, 14, 10", "15, 14, 11", "1, 8, 1", "3, 8, 4", "5, 8, 6"})
    void theMeanIsShownInTenths(int sum, int compared, int tenths) {
        assertThat(new Fit(sum, compared).meanTenths()).isEqualTo(tenths);
    }

    @Test
    void theUsualLevelIsTheMiddleOfTheNearestTests() {
        Audiogram test = test(PLAIN, PLAIN);
        List<Audiogram> others = List.of(
                level("2016-03-01", "90"),
                level("2019-03-01", "25"),
                level("2020-03-01", "DNT"),
                level("2021-03-01", "60"),
                level("2022-09-01", "30"),
                level("2023-03-01", "35"));

        // Of the five nearest four have a level there; without the farthest, 30, 35 and 60.
        UsualHearing usual = UsualHearing.around(test, others).orElseThrow();
        assertThat(usual.thresholds().threshold(Ear.LEFT, Frequency.HZ_4000)).isEqualTo(Threshold.measured(35));
        assertThat(usual.tests()).isEqualTo(5);
        assertThat(UsualHearing.around(test, List.of())).isEmpty();
        assertThat(UsualHearing.around(test, List.of(level("2021-03-01", "NR")))
                        .orElseThrow()
                        .thresholds()
                        .threshold(Ear.LEFT, Frequency.HZ_4000))
                .isEqualTo(Threshold.notGiven());
    }

    private static Audiogram level(String date, String at4000) {
        return Tests.audiogram(date, TestPurpose.ANNUAL, PLAIN.replace("20", at4000), PLAIN);
    }
}
