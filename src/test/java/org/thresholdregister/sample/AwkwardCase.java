package org.thresholdregister.sample;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;
import org.thresholdregister.core.decision.DecisionKind;

/** Workers of the sample whose story is told on purpose, because a real plant has one like it. */
enum AwkwardCase {
    LATE_BASELINE(
            "baseline eleven months after enrolment",
            worker -> worker.baseline("2017-10-05").yearly(9, 20, 2018, 2026),
            21),
    ENROLLED_LATELY(
            "enrolled in the last two months, no test yet, baseline not yet due",
            worker -> worker.hired(
                    worker.number == 398 ? "2026-10-05" : worker.number == 399 ? "2026-10-26" : "2026-11-09"),
            398,
            399,
            400),
    BASELINE_OVERDUE(
            "enrolled more than six months ago, no test yet",
            worker -> worker.hired(worker.number == 386 ? "2026-01-12" : "2026-03-16"),
            386,
            389),
    NO_BASELINE_DECLARED(
            "no test with purpose `baseline`: the first annual test serves",
            worker -> worker.yearly(2, 14, 2017, 2026),
            29),
    TEST_BEFORE_BASELINE(
            "an annual test before the baseline",
            worker -> worker.annual("2016-11-22").baseline("2017-04-06").yearly(4, 10, 2018, 2026),
            34),
    MISSED_YEARS(
            "no tests from 2019 to 2021",
            worker -> worker.baseline("2017-01-24").yearly(1, 25, 2018, 2018).yearly(2, 20, 2022, 2026),
            47),
    LONG_OVERDUE(
            "last tested in spring 2025 and still employed",
            worker -> worker.baseline("2017-03-07").yearly(3, 15, 2018, 2025),
            55,
            140),
    RETEST_CONFIRMS(
            "the retest shows the shift too (2022); the baseline stays, so the shift comes back each year",
            worker -> worker.worsens(Ears.BOTH, "2021-05-03", 20)
                    .baseline("2017-02-07")
                    .yearly(2, 10, 2018, 2021)
                    .annual("2022-02-08")
                    .retest("2022-02-24")
                    .yearly(2, 10, 2023, 2026),
            61),
    RETEST_CLEARS(
            "the retest does not show the shift (2021)",
            worker -> worker.baseline("2017-01-05")
                    .yearly(6, 8, 2018, 2020)
                    .annual("2021-06-08")
                    .latest(raised(Ears.LEFT, 20))
                    .retest("2021-06-24")
                    .yearly(6, 8, 2022, 2026),
            64),
    RETEST_ON_THE_SAME_DAY(
            "retested on the day of the test (2020)",
            worker -> worker.baseline("2017-02-14")
                    .yearly(2, 14, 2018, 2019)
                    .annual("2020-02-11")
                    .latest(raised(Ears.BOTH, 20))
                    .retest("2020-02-11")
                    .remark("earphones refitted and the test repeated at once")
                    .yearly(2, 14, 2021, 2026),
            66),
    RETEST_ON_DAY_30(
            "retested on day 30, which counts (2022)",
            worker -> worker.baseline("2017-03-14")
                    .yearly(3, 14, 2018, 2021)
                    .annual("2022-03-09")
                    .latest(raised(Ears.RIGHT, 20))
                    .retest("2022-04-08")
                    .yearly(3, 14, 2023, 2026),
            72),
    RETEST_ON_DAY_31(
            "retested on day 31, which does not count (2022)",
            worker -> worker.baseline("2017-03-15")
                    .yearly(3, 14, 2018, 2021)
                    .annual("2022-03-08")
                    .latest(raised(Ears.RIGHT, 20))
                    .retest("2022-04-08")
                    .yearly(3, 14, 2023, 2026),
            73),
    TWO_RETESTS(
            "two retests in the window (2019): the first shows the shift, the last does not",
            worker -> worker.baseline("2017-03-21")
                    .yearly(9, 10, 2018, 2018)
                    .annual("2019-09-10")
                    .latest(raised(Ears.LEFT, 20))
                    .retest("2019-09-17")
                    .latest(raised(Ears.LEFT, 20))
                    .retest("2019-10-08")
                    .yearly(9, 10, 2020, 2026),
            78),
    RETEST_OF_ONE_EAR(
            "both ears shifted, the retest could test the left only (2020)",
            worker -> worker.baseline("2017-01-31")
                    .yearly(1, 28, 2018, 2019)
                    .annual("2020-01-28")
                    .latest(raised(Ears.BOTH, 20))
                    .retest("2020-02-18")
                    .latest(withoutNumbers(Ear.RIGHT, Reason.COULD_NOT_TEST))
                    .remark("right ear could not be tested: infection, sent to own doctor")
                    .yearly(1, 28, 2021, 2026),
            81),
    RETEST_FINDS_THE_OTHER_EAR(
            "the left ear shifted, the retest clears it and shows a shift on the right (2021)",
            worker -> worker.baseline("2017-04-11")
                    .yearly(4, 11, 2018, 2020)
                    .annual("2021-04-13")
                    .latest(raised(Ears.LEFT, 20))
                    .retest("2021-05-04")
                    .latest(raised(Ears.RIGHT, 20))
                    .yearly(4, 11, 2022, 2026),
            84),
    RETEST_AFTER_A_LATE_RETEST(
            "a retest on day 41 is judged as a test of its own, and a second retest resolves it (2023)",
            worker -> worker.baseline("2017-02-21")
                    .yearly(2, 10, 2018, 2022)
                    .annual("2023-02-07")
                    .latest(raised(Ears.BOTH, 20))
                    .retest("2023-03-20")
                    .latest(raised(Ears.BOTH, 20))
                    .retest("2023-04-04")
                    .yearly(2, 10, 2024, 2026),
            88),
    RETEST_WITHOUT_A_SHIFT(
            "a retest with no shift before it (2024), judged as a test of its own",
            worker -> worker.baseline("2017-04-12")
                    .yearly(5, 14, 2018, 2023)
                    .annual("2024-05-14")
                    .retest("2024-05-28")
                    .yearly(5, 14, 2025, 2026),
            90),
    RETEST_IN_THE_NEXT_YEAR(
            "tested in December 2023, the shift confirmed in January 2024",
            worker -> worker.worsens(Ears.RIGHT, "2023-06-05", 22)
                    .baseline("2016-12-06")
                    .yearly(12, 5, 2017, 2022)
                    .annual("2023-12-12")
                    .retest("2024-01-09")
                    .yearly(11, 28, 2024, 2025),
            93),
    NO_RETEST(
            "a shift that nobody retested (2025), gone a year later",
            worker -> worker.baseline("2017-04-25")
                    .yearly(5, 5, 2018, 2024)
                    .annual("2025-05-06")
                    .latest(raised(Ears.LEFT, 20))
                    .yearly(5, 5, 2026, 2026),
            95),
    RETEST_OPEN(
            "a shift in November 2026, the thirty days for a retest still running",
            worker -> {
                worker.baseline("2017-01-10").yearly(11, 10, 2017, 2025);
                worker.annual(worker.number == 101 ? "2026-11-04" : "2026-11-17")
                        .latest(raised(Ears.BOTH, 20));
            },
            101,
            226),
    NO_RESPONSE(
            "no response at the loudest tone (`>95`) from 2021 on, both ears: a shift without a number",
            worker -> worker.is(Sex.MALE, "1962-03-19")
                    .worsens(Ears.BOTH, "1990-01-01", 40)
                    .worsens(Ears.BOTH, "2020-06-01", 40)
                    .baseline("2017-01-12")
                    .yearly(1, 20, 2018, 2020)
                    .annual("2021-01-19")
                    .retest("2021-02-09")
                    .yearly(1, 20, 2022, 2026),
            107),
    NO_RESPONSE_AT_BASELINE(
            "no response at 4000 Hz already at the baseline, left ear: undecided every year",
            worker -> worker.worsens(Ears.LEFT, "1995-01-01", 80)
                    .baseline("2017-01-26")
                    .yearly(1, 20, 2018, 2026),
            110),
    NO_RESPONSE_WITHOUT_A_LEVEL(
            "`NR`: no response, the level not given (2022)",
            worker -> worker.baseline("2017-03-02")
                    .yearly(3, 2, 2018, 2021)
                    .annual("2022-03-03")
                    .latest(with(Ears.RIGHT, Frequency.HZ_4000, Threshold.noResponse()))
                    .yearly(3, 2, 2023, 2026),
            113),
    DID_NOT_TEST(
            "`DNT` at 3000 Hz, left ear (2021)",
            worker -> worker.baseline("2017-03-28")
                    .yearly(7, 5, 2018, 2020)
                    .annual("2021-07-06")
                    .latest(with(Ears.LEFT, Frequency.HZ_3000, Threshold.notTested(Reason.DID_NOT_TEST)))
                    .yearly(7, 5, 2022, 2026),
            116),
    COULD_NOT_TEST(
            "`CNT` for the whole right ear (2024)",
            worker -> worker.baseline("2017-03-30")
                    .yearly(8, 6, 2018, 2023)
                    .annual("2024-08-06")
                    .latest(withoutNumbers(Ear.RIGHT, Reason.COULD_NOT_TEST))
                    .remark("right ear dressed after minor surgery")
                    .yearly(8, 6, 2025, 2026),
            118),
    BLANK_THRESHOLD(
            "2000 Hz left blank, both ears (2019)",
            worker -> worker.baseline("2017-04-04")
                    .yearly(9, 4, 2018, 2018)
                    .annual("2019-09-04")
                    .latest(with(Ears.BOTH, Frequency.HZ_2000, Threshold.notGiven()))
                    .yearly(9, 4, 2020, 2026),
            120),
    SWAPPED_EARS(
            "left and right exchanged on the test of 2020: the better ear seems to have shifted",
            worker -> worker.worsens(Ears.LEFT, "2001-01-01", 35)
                    .baseline("2017-02-28")
                    .yearly(10, 6, 2018, 2019)
                    .annual("2020-10-06")
                    .latest(AwkwardCase::earsSwapped)
                    .yearly(10, 6, 2021, 2026),
            124),
    INVALID_TEST(
            "tested in the month of the faulty instrument (November 2023); the test was set aside and made again in"
                    + " January",
            worker -> worker.worksIn(Plant.COLD_END)
                    .baseline("2016-11-17")
                    .yearly(11, 14, 2017, 2022)
                    .annual("2023-11-14")
                    .latest(raised(Ears.BOTH, 5))
                    .decided(
                            Ears.BOTH,
                            LocalDate.of(2023, 11, 14),
                            DecisionKind.INVALID_TEST,
                            LocalDate.of(2023, 12, 18),
                            Plant.AUDIOLOGIST,
                            "instrument A-1 read about 10 dB too high in November 2023")
                    .annual("2024-01-09")
                    .yearly(1, 9, 2025, 2026),
            131),
    LEFT_WITH_A_SHIFT(
            "exit test with a shift, gone before a retest (August 2025)",
            worker -> {
                worker.baseline("2016-12-13").yearly(10, 12, 2018, 2024).leaves(LocalDate.of(2025, 8, 29));
                worker.test(LocalDate.of(2025, 8, 26), TestPurpose.EXIT);
                worker.latest(raised(Ears.BOTH, 20));
            },
            137),
    LEAVES_SOON(
            "leaves on 18 December 2026, before the next annual test is due",
            worker -> worker.baseline("2017-01-17").yearly(1, 22, 2018, 2026).leaves(LocalDate.of(2026, 12, 18)),
            142),
    REHIRED(
            "away from summer 2018 to winter 2023, then tested again against the old baseline",
            worker -> worker.baseline("2016-11-15")
                    .yearly(11, 14, 2017, 2017)
                    .annual("2023-02-14")
                    .remark("back after four and a half years elsewhere")
                    .yearly(2, 14, 2024, 2026),
            151),
    TWO_BASELINES(
            "a second test with purpose `baseline` (2020), which does not become the baseline by itself",
            worker -> worker.baseline("2017-02-16")
                    .yearly(6, 2, 2018, 2019)
                    .baseline("2020-07-07")
                    .yearly(7, 7, 2021, 2026),
            156),
    BETTER_THAN_THE_BASELINE(
            "a left ear better than its baseline ever since",
            worker ->
                    worker.baseline("2017-03-01").latest(raised(Ears.LEFT, 20)).yearly(6, 5, 2018, 2026),
            160),
    OTHER_TEST(
            "a test with purpose `other` (2022), shown and never judged",
            worker -> {
                worker.baseline("2017-03-22").yearly(6, 13, 2018, 2022);
                worker.test(LocalDate.of(2022, 7, 19), TestPurpose.OTHER);
                worker.latest(raised(Ears.BOTH, 20)).remark("an hour after a compressed-air hose burst");
                worker.yearly(6, 13, 2023, 2026);
            },
            163),
    OVER_60(
            "over sixty at the baseline, near seventy now",
            worker -> worker.is(Sex.MALE, "1956-09-02")
                    .baseline("2016-11-24")
                    .yearly(11, 16, 2017, 2025)
                    .annual("2026-11-10"),
            5),
    UNDER_20(
            "eighteen at the baseline",
            worker -> worker.is(Sex.FEMALE, "2006-08-14")
                    .hired("2025-02-17")
                    .baseline("2025-03-11")
                    .annual("2026-03-03"),
            371),
    NO_BIRTH_DATE(
            "no birth date; the shift is small enough to decide without",
            worker -> worker.birthDateNotOnFile().baseline("2017-04-18").yearly(4, 18, 2018, 2026),
            169),
    NO_BIRTH_DATE_AND_A_SHIFT(
            "no birth date and a shift of 10 dB or more (2026): undecided",
            worker -> worker.birthDateNotOnFile()
                    .baseline("2017-04-20")
                    .yearly(4, 20, 2018, 2025)
                    .annual("2026-04-21")
                    .latest(raised(Ears.LEFT, 20)),
            172),
    NO_SEX(
            "sex not on file; a shift in 2025 is undecided",
            worker -> worker.sexNotOnFile()
                    .baseline("2017-04-27")
                    .yearly(4, 27, 2018, 2024)
                    .annual("2025-04-29")
                    .latest(raised(Ears.RIGHT, 20))
                    .annual("2026-04-28"),
            176),
    NO_SITE(
            "no site, department, job, noise group or level on file",
            worker -> worker.placeNotOnFile().baseline("2017-04-19").yearly(5, 9, 2018, 2026),
            181),
    SAME_NAME(
            "two people of the same name",
            worker -> ordinary(worker.is(Sex.FEMALE, worker.number == 188 ? "1979-10-21" : "1998-02-05")
                    .named("Ana", "Núñezal")),
            188,
            303),
    LINED_OUT(
            "a case recorded in 2021 and lined out in 2022, when the shift was gone",
            worker -> worker.is(Sex.MALE, "1972-01-30")
                    .worsens(Ears.BOTH, "2001-01-01", 20)
                    .baseline("2017-03-09")
                    .yearly(3, 10, 2018, 2020)
                    .annual("2021-03-09")
                    .latest(raised(Ears.LEFT, 20))
                    .retest("2021-03-30")
                    .latest(raised(Ears.LEFT, 15))
                    .decided(
                            Ears.LEFT,
                            LocalDate.of(2021, 3, 9),
                            DecisionKind.RECORDED,
                            LocalDate.of(2021, 4, 5),
                            Plant.SAFETY_OFFICER,
                            "")
                    .annual("2022-03-08")
                    .decided(
                            Ears.LEFT,
                            LocalDate.of(2021, 3, 9),
                            DecisionKind.LINED_OUT,
                            LocalDate.of(2022, 3, 29),
                            Plant.SAFETY_OFFICER,
                            "shift not persistent: gone on the test of 2022-03-08")
                    .yearly(3, 10, 2023, 2026),
            195),
    NOT_WORK_RELATED(
            "a loss of the right ear that a physician found not work-related, found so again each year",
            worker -> worker.is(Sex.FEMALE, "1981-06-17")
                    .worsens(Ears.RIGHT, "2023-09-04", 40)
                    .baseline("2017-03-23")
                    .yearly(2, 20, 2018, 2023)
                    .annual("2024-02-20")
                    .retest("2024-03-12")
                    .decided(
                            Ears.RIGHT,
                            LocalDate.of(2024, 2, 20),
                            DecisionKind.NOT_WORK_RELATED,
                            LocalDate.of(2024, 3, 18),
                            Plant.PHYSICIAN,
                            "sudden loss of one ear with vertigo, seen by an ear specialist in autumn 2023")
                    .yearly(2, 20, 2025, 2026),
            198),
    TWO_CASES_IN_ONE_EAR(
            "a recordable loss in 2019 and a further one in the same ear in 2024",
            worker -> worker.is(Sex.MALE, "1984-05-08")
                    .worsens(Ears.LEFT, "2004-01-01", 10)
                    .worsens(Ears.LEFT, "2018-09-03", 20)
                    .worsens(Ears.LEFT, "2023-09-04", 20)
                    .baseline("2017-01-19")
                    .yearly(1, 20, 2018, 2018)
                    .annual("2019-01-22")
                    .retest("2019-02-12")
                    .yearly(1, 20, 2020, 2023)
                    .annual("2024-01-23")
                    .retest("2024-02-13")
                    .yearly(1, 20, 2025, 2026),
            201),
    CASE_NOT_ENTERED(
            "a case of October 2026 that nobody has entered on the log: overdue",
            worker -> worker.leaveCaseOpen()
                    .is(Sex.MALE, "1977-11-23")
                    .worsens(Ears.BOTH, "2001-01-01", 15)
                    .worsens(Ears.RIGHT, "2026-03-02", 25)
                    .baseline("2017-01-18")
                    .yearly(9, 20, 2017, 2025)
                    .annual("2026-09-22")
                    .retest("2026-10-13"),
            215),
    CASE_JUST_FOUND(
            "a case that the retest of 20 November 2026 confirmed: seven days to enter it",
            worker -> worker.leaveCaseOpen()
                    .worksIn(Plant.PACKING_HALL)
                    .is(Sex.FEMALE, "1979-04-02")
                    .worsens(Ears.BOTH, "2003-01-01", 20)
                    .worsens(Ears.LEFT, "2026-04-06", 25)
                    .baseline("2016-11-21")
                    .yearly(10, 30, 2017, 2025)
                    .annual("2026-10-29")
                    .retest("2026-11-20"),
            218),
    SMALL_GROUP(
            "Maintenance at Quarry Road has four people: counts of groups under five are hidden from some readers",
            worker -> ordinary(worker.worksIn(Plant.QUARRY_ROAD_MAINTENANCE)),
            203,
            206,
            209,
            212);

    private final String description;
    private final Consumer<Worker> story;
    private final List<Integer> workerNumbers;

    AwkwardCase(String description, Consumer<Worker> story, Integer... workerNumbers) {
        this.description = description;
        this.story = story;
        this.workerNumbers = List.of(workerNumbers);
    }

    static Optional<AwkwardCase> ofWorker(int number) {
        return Arrays.stream(values())
                .filter(awkward -> awkward.workerNumbers.contains(number))
                .findFirst();
    }

    String description() {
        return description;
    }

    List<Integer> workerNumbers() {
        return workerNumbers;
    }

    /** Lets the story happen to a worker who stays until the end unless it says otherwise. */
    void happenTo(Worker worker) {
        story.accept(worker.steady(true));
    }

    private static void ordinary(Worker worker) {
        new Career(worker.steady(false), false).live();
    }

    private static UnaryOperator<Audiogram> raised(Ears ears, int decibels) {
        return test -> changed(test, ears, Frequency.HZ_2000, Frequency.HZ_6000, before -> switch (before) {
            case Threshold.Measured(var level) -> Threshold.measured(level.decibels() + decibels);
            case Threshold.NoResponse _, Threshold.NotTested _ -> before;
        });
    }

    private static UnaryOperator<Audiogram> with(Ears ears, Frequency frequency, Threshold threshold) {
        return test -> changed(test, ears, frequency, frequency, _ -> threshold);
    }

    private static UnaryOperator<Audiogram> withoutNumbers(Ear ear, Reason reason) {
        return test ->
                changed(test, Ears.of(ear), Frequency.HZ_500, Frequency.HZ_8000, _ -> Threshold.notTested(reason));
    }

    private static Audiogram earsSwapped(Audiogram test) {
        Audiogram swapped = test;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                swapped = swapped.with(ear, frequency, test.threshold(ear.other(), frequency));
            }
        }
        return swapped;
    }

    private static Audiogram changed(
            Audiogram test, Ears ears, Frequency lowest, Frequency highest, UnaryOperator<Threshold> change) {
        Audiogram changed = test;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                if (ears.include(ear) && frequency.compareTo(lowest) >= 0 && frequency.compareTo(highest) <= 0) {
                    changed = changed.with(ear, frequency, change.apply(test.threshold(ear, frequency)));
                }
            }
        }
        return changed;
    }
}
