package org.thresholdregister.core.scheduling;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.scheduling.TestPlan.LeftOut;
import org.thresholdregister.core.scheduling.TestPlan.Planned;
import org.thresholdregister.core.scheduling.TestPlan.Why;

class TestPlannerTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
    private static final WorkShift EARLY = new WorkShift("early", LocalTime.of(6, 0), LocalTime.of(14, 0));
    private static final WorkShift LATE = new WorkShift("late", LocalTime.of(14, 0), LocalTime.of(22, 0));
    private static final WorkShift NIGHT = new WorkShift("night", LocalTime.of(22, 0), LocalTime.of(6, 0));
    private static final QuietRule OSHA = RuleSets.OSHA.quiet();
    private static final QuietRule STRICT = RuleSets.find("niosh").orElseThrow().quiet();

    private static DayHours day(LocalDate day, String from, String to, int perHour) {
        return new DayHours(day, LocalTime.parse(from), LocalTime.parse(to), perHour, List.of());
    }

    private static DueTest due(String worker, Occasion occasion, LocalDate lastDay, WorkShift shift, QuietRule quiet) {
        return new DueTest(
                worker, occasion, lastDay, new Citation("a rule"), "Press", Optional.ofNullable(shift), quiet, 0);
    }

    private static TestPlan plan(DayHours day, DueTest... due) {
        return TestPlanner.plan(List.of(day), Set.of(), List.of(due));
    }

    private static List<String> times(TestPlan plan) {
        return plan.planned().stream()
                .map(planned -> planned.slot().starts() + " " + planned.due().workerId())
                .toList();
    }

    @Test
    void timesAreSpreadOverTheHourAndStopBeforeBreaksAndTheEnd() {
        DayHours hours = new DayHours(
                DAY,
                LocalTime.of(6, 0),
                LocalTime.of(8, 50),
                4,
                List.of(new DayHours.Break(LocalTime.of(7, 10), LocalTime.of(7, 40))));
        assertThat(hours.slots().stream().map(slot -> slot.starts().toString()))
                .containsExactly("06:00", "06:15", "06:30", "06:45", "07:45", "08:00", "08:15", "08:30");
    }

    @Test
    void whoEndedAtTenInTheEveningIsRestedFromNoonOn() {
        assertThat(LATE.isRested(DAY.atTime(11, 59), 14)).isFalse();
        assertThat(LATE.isRested(DAY.atTime(12, 0), 14)).isTrue();
        assertThat(LATE.isRested(DAY.atTime(14, 0), 14)).isTrue();
        assertThat(LATE.isRested(DAY.atTime(14, 1), 14)).isFalse();
        assertThat(NIGHT.isRested(DAY.atTime(20, 0), 14)).isTrue();
        assertThat(NIGHT.isRested(DAY.atTime(23, 0), 14)).isFalse();
        assertThat(NIGHT.isRested(DAY.atTime(5, 0), 14)).isFalse();
        assertThat(NIGHT.sinceEnd(DAY.atTime(5, 0)).toHours()).isEqualTo(23);
    }

    @Test
    void thoseWhoNeedQuietComeBeforeTheirShiftAndTheOthersAfterThem() {
        TestPlan plan = plan(
                day(DAY, "06:00", "08:00", 1),
                due("A", Occasion.ANNUAL, DAY.minusDays(40), EARLY, OSHA),
                due("B", Occasion.BASELINE, DAY.plusDays(3), EARLY, OSHA));
        assertThat(times(plan)).containsExactly("06:00 B", "07:00 A");
        assertThat(plan.planned()).extracting(Planned::quiet).containsExactly(QuietTime.RESTED, QuietTime.NOT_NEEDED);
    }

    @Test
    void theLateShiftIsNotCalledInTheMorningWhileNoonIsFree() {
        TestPlan plan = plan(
                day(DAY, "06:00", "14:00", 1),
                due("L", Occasion.ANNUAL, DAY, LATE, OSHA),
                due("E", Occasion.ANNUAL, DAY, EARLY, OSHA));
        assertThat(times(plan)).containsExactly("06:00 E", "12:00 L");
    }

    @Test
    void whereProtectorsMayStandInTheyDoAndTheSheetSaysSo() {
        TestPlan plan = plan(day(DAY, "08:00", "09:00", 1), due("B", Occasion.BASELINE, DAY, EARLY, OSHA));
        assertThat(plan.planned()).extracting(Planned::quiet).containsExactly(QuietTime.PROTECTORS_INSTEAD);
    }

    @Test
    void whereTheyMayNotNobodyIsCalledOutOfTheNoise() {
        TestPlan plan = plan(day(DAY, "08:00", "09:00", 1), due("B", Occasion.BASELINE, DAY, EARLY, STRICT));
        assertThat(plan.planned()).isEmpty();
        assertThat(plan.leftOut()).extracting(LeftOut::why).containsExactly(Why.NO_QUIET_TIME);
    }

    @Test
    void twelveHoursDoWhereTheRuleSetAsksForTwelve() {
        TestPlan plan = plan(day(DAY, "10:00", "11:00", 1), due("B", Occasion.BASELINE, DAY, LATE, STRICT));
        assertThat(plan.planned()).extracting(Planned::quiet).containsExactly(QuietTime.RESTED);
    }

    @Test
    void anUnknownShiftIsPlannedAndToBeAsked() {
        TestPlan plan = plan(day(DAY, "10:00", "11:00", 1), due("B", Occasion.BASELINE, DAY, null, STRICT));
        assertThat(plan.planned()).extracting(Planned::quiet).containsExactly(QuietTime.TO_BE_ASKED);
    }

    @Test
    void aRetestNeedsQuietThoughOshaAsksForNoneAndAnAnnualTestNeedsNone() {
        assertThat(Occasion.RETEST.needsQuiet(OSHA)).isTrue();
        assertThat(Occasion.BASELINE.needsQuiet(OSHA)).isTrue();
        assertThat(Occasion.ANNUAL.needsQuiet(OSHA)).isFalse();
        assertThat(Occasion.EXIT.needsQuiet(OSHA)).isFalse();
    }

    @Test
    void aRetestGoesBeforeAnOverdueAnnualTestAndNeverAfterItsWindow() {
        TestPlan plan = plan(
                day(DAY, "10:00", "11:00", 1),
                due("A", Occasion.ANNUAL, DAY.minusDays(100), null, OSHA),
                due("R", Occasion.RETEST, DAY, null, OSHA),
                due("Z", Occasion.RETEST, DAY.minusDays(1), null, OSHA));
        assertThat(times(plan)).containsExactly("10:00 R");
        assertThat(plan.leftOut())
                .extracting(left -> left.due().workerId() + " " + left.why())
                .containsExactly("Z TOO_LATE", "A NO_TIME_LEFT");
    }

    @Test
    void whoIsDueTwiceComesOnceAndForTheTestThatCounts() {
        TestPlan plan = plan(
                day(DAY, "10:00", "12:00", 1),
                due("A", Occasion.RETEST, DAY.minusDays(1), null, OSHA),
                due("A", Occasion.ANNUAL, DAY, null, OSHA),
                due("B", Occasion.RETEST, DAY, null, OSHA),
                due("B", Occasion.ANNUAL, DAY.minusDays(9), null, OSHA));
        assertThat(plan.planned())
                .extracting(planned ->
                        planned.due().workerId() + " " + planned.due().occasion())
                .containsExactlyInAnyOrder("A ANNUAL", "B RETEST");
        assertThat(plan.leftOut()).isEmpty();
    }

    @Test
    void aDepartmentComesTogether() {
        List<DueTest> people = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            people.add(new DueTest(
                    "W" + i,
                    Occasion.ANNUAL,
                    DAY.plusDays(i),
                    new Citation("a rule"),
                    i % 3 == 0 ? "Furnace" : i % 3 == 1 ? "Press" : "Saws",
                    Optional.empty(),
                    OSHA,
                    0));
        }
        List<String> departments =
                TestPlanner.plan(List.of(day(DAY, "06:00", "10:00", 4)), Set.of(), people).planned().stream()
                        .map(planned -> planned.due().department())
                        .toList();
        assertThat(departments)
                .containsExactly(
                        "Furnace", "Furnace", "Furnace", "Furnace", "Press", "Press", "Press", "Press", "Saws", "Saws",
                        "Saws", "Saws");
    }

    @Test
    void thePlanKeepsItsPromisesForAnyDayAndAnyPeople() {
        Random dice = new Random(20261201);
        for (int round = 0; round < 400; round++) {
            List<DayHours> days = days(dice);
            Set<Slot> taken = days.stream()
                    .flatMap(day -> day.slots().stream())
                    .filter(slot -> dice.nextInt(6) == 0)
                    .collect(Collectors.toSet());
            List<DueTest> people = people(dice, dice.nextInt(60));
            TestPlan plan = TestPlanner.plan(days, taken, people);

            List<String> everybody = new ArrayList<>();
            plan.planned().forEach(planned -> everybody.add(planned.due().workerId()));
            plan.leftOut().forEach(left -> everybody.add(left.due().workerId()));
            assertThat(everybody)
                    .as("each worker once, nobody dropped")
                    .containsExactlyInAnyOrderElementsOf(
                            people.stream().map(DueTest::workerId).collect(Collectors.toSet()));
            assertThat(plan.planned().stream().map(Planned::slot).collect(Collectors.toSet()))
                    .as("one person at a time, none at a time taken")
                    .hasSameSizeAs(plan.planned())
                    .noneMatch(taken::contains);
            assertNeverOverCapacity(days, plan);
            for (Planned planned : plan.planned()) {
                DueTest due = planned.due();
                assertThat(due.occasion().endsWithItsLastDay()
                                && planned.slot().day().isAfter(due.lastDay()))
                        .isFalse();
                if (planned.quiet() == QuietTime.PROTECTORS_INSTEAD) {
                    assertThat(due.quiet().protectorsMayStandIn()).isTrue();
                }
                if (planned.quiet() == QuietTime.RESTED) {
                    WorkShift shift = due.shift().orElseThrow();
                    LocalDateTime time = planned.slot().time();
                    assertThat(shift.isAtWork(time)).isFalse();
                    assertThat(shift.sinceEnd(time).toMinutes())
                            .isGreaterThanOrEqualTo(due.quiet().hours() * 60L);
                }
            }
            List<DueTest> shuffled = new ArrayList<>(people);
            Collections.shuffle(shuffled, dice);
            List<DayHours> daysAnyhow = new ArrayList<>(days);
            Collections.shuffle(daysAnyhow, dice);
            assertThat(TestPlanner.plan(daysAnyhow, taken, shuffled)).isEqualTo(plan);
        }
    }

    private static void assertNeverOverCapacity(List<DayHours> days, TestPlan plan) {
        for (DayHours hours : days) {
            List<Integer> minutes = plan.planned().stream()
                    .filter(planned -> planned.slot().day().equals(hours.day()))
                    .map(planned -> planned.slot().starts().toSecondOfDay() / 60)
                    .toList();
            for (int begin : minutes) {
                long inTheHour = minutes.stream()
                        .filter(minute -> minute >= begin && minute < begin + 60)
                        .count();
                assertThat(inTheHour).isLessThanOrEqualTo(hours.perHour());
            }
        }
    }

    /** A second opinion by another algorithm: the most retests that any arrangement can hold. */
    @Test
    void noRetestIsLeftOutWhileAnyArrangementHoldsMore() {
        Random dice = new Random(7);
        for (int round = 0; round < 300; round++) {
            List<DayHours> days = days(dice);
            List<DueTest> people = people(dice, dice.nextInt(40));
            TestPlan plan = TestPlanner.plan(days, Set.of(), people);
            List<DueTest> retests = plan.planned().stream()
                    .map(Planned::due)
                    .filter(due -> due.occasion() == Occasion.RETEST)
                    .toList();
            assertThat(retests).hasSize(mostRetests(days, people));
        }
    }

    /** Retests that may come at any time within their window: earliest end of the window first is known to be best. */
    private static int mostRetests(List<DayHours> days, List<DueTest> people) {
        Map<LocalDate, Integer> free = new HashMap<>();
        days.forEach(day -> free.put(day.day(), day.slots().size()));
        Set<String> seen = new HashSet<>();
        int held = 0;
        for (DueTest due : people.stream().sorted(DueTest.BY_URGENCY).toList()) {
            if (due.occasion() != Occasion.RETEST || !seen.add(due.workerId())) {
                continue;
            }
            Optional<LocalDate> latest = free.entrySet().stream()
                    .filter(entry -> entry.getValue() > 0 && !entry.getKey().isAfter(due.lastDay()))
                    .map(Map.Entry::getKey)
                    .max(LocalDate::compareTo);
            if (latest.isPresent()) {
                free.merge(latest.get(), -1, Integer::sum);
                held++;
            }
        }
        return held;
    }

    private static List<DayHours> days(Random dice) {
        return IntStream.range(0, 1 + dice.nextInt(3))
                .mapToObj(number -> day(
                        DAY.plusDays(number),
                        dice.nextBoolean() ? "05:30" : "08:00",
                        dice.nextBoolean() ? "10:00" : "14:30",
                        1 + dice.nextInt(7)))
                .toList();
    }

    /** One due test for each, under a rule set that lets protectors stand in. */
    private static List<DueTest> people(Random dice, int number) {
        List<WorkShift> shifts = List.of(EARLY, LATE, NIGHT);
        return IntStream.range(0, number)
                .mapToObj(i -> new DueTest(
                        "W-" + i,
                        Occasion.values()[dice.nextInt(4)],
                        DAY.plusDays(dice.nextInt(8) - 3),
                        new Citation("a rule"),
                        "Department " + dice.nextInt(3),
                        dice.nextInt(4) == 0 ? Optional.empty() : Optional.of(shifts.get(dice.nextInt(3))),
                        OSHA,
                        dice.nextInt(2)))
                .toList();
    }

    @Test
    void aStrictRuleSetIsKeptForAnyDayAndAnyPeople() {
        Random dice = new Random(12);
        for (int round = 0; round < 200; round++) {
            List<DueTest> people = people(dice, dice.nextInt(40)).stream()
                    .map(due -> new DueTest(
                            due.workerId(),
                            due.occasion(),
                            due.lastDay(),
                            due.basis(),
                            due.department(),
                            due.shift(),
                            STRICT,
                            due.missed()))
                    .toList();
            TestPlan plan = TestPlanner.plan(days(dice), Set.of(), people);
            assertThat(plan.planned()).extracting(Planned::quiet).doesNotContain(QuietTime.PROTECTORS_INSTEAD);
        }
    }

    @Test
    void aWeekOfTwoHundredPeopleIsPlannedWhileTheNurseWaits() {
        Random dice = new Random(200);
        List<DayHours> week = IntStream.range(0, 5)
                .mapToObj(number -> day(DAY.plusDays(number), "05:30", "14:30", 6))
                .toList();
        long before = System.nanoTime();
        TestPlan plan = TestPlanner.plan(week, Set.of(), people(dice, 200));
        assertThat((System.nanoTime() - before) / 1_000_000).isLessThan(10_000);
        assertThat(plan.planned()).hasSizeGreaterThan(150);
    }

    @Test
    void theMobileUnitRuleGivesAYearAndAsksForProtectorsAfterSixMonths() {
        MobileUnitRule rule = MobileUnitRule.of(RuleSets.OSHA).orElseThrow();
        LocalDate first = LocalDate.of(2026, 1, 31);
        assertThat(rule.baselineBy(first)).isEqualTo("2027-01-31");
        assertThat(rule.protectorsFrom(first)).contains(LocalDate.of(2026, 7, 31));
        assertThat(MobileUnitRule.of(RuleSets.find("niosh").orElseThrow())).isEmpty();
    }
}
