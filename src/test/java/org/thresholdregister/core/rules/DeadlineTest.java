package org.thresholdregister.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.rules.Deadline.CalendarDays;
import org.thresholdregister.core.rules.Deadline.Months;
import org.thresholdregister.core.rules.Deadline.WorkingDays;

/** Checked against the calendar of 2026: 1 January is a Thursday, 9 March a Monday. */
class DeadlineTest {

    private static Holidays holidays(String... days) {
        return new Holidays(Stream.of(days).map(LocalDate::parse).collect(Collectors.toSet()));
    }

    private static LocalDate after(Deadline deadline, String start, String... holidays) {
        return deadline.after(LocalDate.parse(start), holidays(holidays));
    }

    @ParameterizedTest
    @CsvSource({
        // from Monday, from Friday, from Saturday, from Sunday
        "1, 2026-03-09, 2026-03-10",
        "4, 2026-03-09, 2026-03-13",
        "5, 2026-03-09, 2026-03-16",
        "10, 2026-03-09, 2026-03-23",
        "1, 2026-03-13, 2026-03-16",
        "10, 2026-03-13, 2026-03-27",
        "1, 2026-03-14, 2026-03-16",
        "10, 2026-03-14, 2026-03-27",
        "1, 2026-03-15, 2026-03-16",
        "7, 2026-12-28, 2027-01-06"
    })
    void workingDaysSkipWeekends(int days, String start, String last) {
        assertThat(after(new WorkingDays(days), start)).isEqualTo(last);
    }

    @Test
    void workingDaysSkipHolidays() {
        assertThat(after(new WorkingDays(1), "2026-07-02", "2026-07-03")).isEqualTo("2026-07-06");
        assertThat(after(new WorkingDays(10), "2026-12-21", "2026-12-25", "2027-01-01"))
                .isEqualTo("2027-01-06");
    }

    @Test
    void aHolidayOnAWeekendCostsNoSecondDay() {
        assertThat(after(new WorkingDays(1), "2026-07-03", "2026-07-04")).isEqualTo("2026-07-06");
    }

    @Test
    void theDayThatStartsTheTimeIsNotCountedWhateverItIs() {
        assertThat(after(new WorkingDays(1), "2026-07-03", "2026-07-03")).isEqualTo("2026-07-06");
        assertThat(after(new CalendarDays(1), "2026-07-03")).isEqualTo("2026-07-04");
    }

    @Test
    void inNoTimeItIsTheDayItself() {
        assertThat(after(new WorkingDays(0), "2026-03-14")).isEqualTo("2026-03-14");
        assertThat(after(new CalendarDays(0), "2026-03-14")).isEqualTo("2026-03-14");
        assertThat(after(new Months(0), "2026-03-14")).isEqualTo("2026-03-14");
    }

    @ParameterizedTest
    @CsvSource({
        "21, 2026-03-09, 2026-03-30",
        "30, 2026-01-31, 2026-03-02",
        "30, 2028-01-31, 2028-03-01",
        "90, 2025-12-01, 2026-03-01",
        "450, 2024-02-29, 2025-05-24"
    })
    void calendarDaysTakeInWeekendsAndHolidays(int days, String start, String last) {
        assertThat(after(new CalendarDays(days), start, "2026-03-10", "2026-02-02"))
                .isEqualTo(last);
    }

    @ParameterizedTest
    @CsvSource({
        "6, 2026-03-09, 2026-09-09",
        "12, 2026-03-09, 2027-03-09",
        "1, 2026-01-31, 2026-02-28",
        "1, 2028-01-31, 2028-02-29",
        "6, 2026-08-31, 2027-02-28",
        "12, 2024-02-29, 2025-02-28",
        "36, 2025-02-28, 2028-02-28",
        "1, 2026-02-28, 2026-03-28"
    })
    void monthsEndOnTheSameDayOrTheMonthsLast(int months, String start, String last) {
        assertThat(after(new Months(months), start)).isEqualTo(last);
    }

    /** Counted the other way round: the days from Monday to Friday after the start up to the last day. */
    @Test
    void betweenStartAndEndLieSoManyWorkingDays() {
        Holidays holidays =
                holidays("2026-01-01", "2026-05-25", "2026-07-03", "2026-09-07", "2026-11-26", "2026-12-25");
        for (LocalDate start = LocalDate.parse("2025-12-20"); start.getYear() < 2027; start = start.plusDays(1)) {
            for (int days : Set.of(1, 7, 10)) {
                LocalDate last = new WorkingDays(days).after(start, holidays);
                assertThat(holidays.isWorkingDay(last)).as("%s", last).isTrue();
                assertThat(start.plusDays(1)
                                .datesUntil(last.plusDays(1))
                                .filter(day -> day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0
                                        && !holidays.days().contains(day)))
                        .hasSize(days);
                assertThat(ChronoUnit.DAYS.between(start, last)).isGreaterThanOrEqualTo(days);
            }
        }
    }
}
