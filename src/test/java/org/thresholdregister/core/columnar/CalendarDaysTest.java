package org.thresholdregister.core.columnar;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Period;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CalendarDaysTest {

    private static int completedYears(LocalDate birth, LocalDate then) {
        return CalendarDays.completedYears(
                CalendarDays.monthAndDay((int) birth.toEpochDay()), CalendarDays.monthAndDay((int) then.toEpochDay()));
    }

    @Test
    void aBirthdayCompletesAYearAndTheDayBeforeDoesNot() {
        LocalDate birth = LocalDate.of(1980, 6, 15);

        assertThat(completedYears(birth, LocalDate.of(2020, 6, 14))).isEqualTo(39);
        assertThat(completedYears(birth, LocalDate.of(2020, 6, 15))).isEqualTo(40);
    }

    @Test
    void someoneBornOnALeapDayTurnsAYearOlderInMarch() {
        LocalDate birth = LocalDate.of(1980, 2, 29);

        assertThat(completedYears(birth, LocalDate.of(2021, 2, 28))).isEqualTo(40);
        assertThat(completedYears(birth, LocalDate.of(2021, 3, 1))).isEqualTo(41);
    }

    @Test
    void everyDayOfThreeCenturiesIsFound() {
        LocalDate birth = LocalDate.of(1850, 2, 28);
        for (LocalDate day = birth; day.getYear() < 2150; day = day.plusDays(1)) {
            assertThat(completedYears(birth, day))
                    .isEqualTo(Period.between(birth, day).getYears());
        }
    }

    @Test
    void yearsAreCountedAsTheCalendarCountsThemForwardsAndBackwards() {
        Random random = new Random(5);
        for (int i = 0; i < 200_000; i++) {
            LocalDate birth = LocalDate.of(1900, 1, 1).plusDays(random.nextInt(73_000));
            LocalDate then = birth.plusDays(random.nextInt(-2_000, 40_000));
            assertThat(completedYears(birth, then))
                    .isEqualTo(Period.between(birth, then).getYears());
        }
    }
}
