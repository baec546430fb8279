package org.thresholdregister.core.employment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.employment.Engagement.Kind;
import org.thresholdregister.core.employment.WorkEvent.Engaged;
import org.thresholdregister.core.employment.WorkEvent.Enrolled;
import org.thresholdregister.core.employment.WorkEvent.EnrolmentEnded;
import org.thresholdregister.core.employment.WorkEvent.Hired;
import org.thresholdregister.core.employment.WorkEvent.LeaveBegan;
import org.thresholdregister.core.employment.WorkEvent.Left;
import org.thresholdregister.core.employment.WorkEvent.Listed;
import org.thresholdregister.core.employment.WorkEvent.Moved;
import org.thresholdregister.core.employment.WorkEvent.Returned;
import org.thresholdregister.core.employment.WorkEvent.TransferredToSuccessor;

class WorkingLifeTest {

    private static final Placement SAWS = new Placement("Mill", "Saws", "Sawyer");
    private static final Placement CRANES = new Placement("Yard", "Cranes", "Driver");

    private static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }

    private static DatedEvent on(String iso, WorkEvent event) {
        return new DatedEvent(day(iso), event);
    }

    private static WorkingLife life(DatedEvent... events) {
        return WorkingLife.of(List.of(events));
    }

    private static List<Inconsistency.Kind> misfits(DatedEvent... events) {
        return life(events).inconsistencies().stream().map(Inconsistency::kind).toList();
    }

    @Test
    void theLastDayOfEmploymentIsStillWorked() {
        WorkingLife life = life(on("2020-01-06", new Hired(SAWS)), on("2026-02-27", new Left()));
        assertThat(life.on(day("2020-01-05")).standing()).isEqualTo(new Standing.NotYetEmployed());
        assertThat(life.on(day("2020-01-06")).standing()).isEqualTo(new Standing.Employed());
        assertThat(life.on(day("2026-02-27")).standing()).isEqualTo(new Standing.Employed());
        assertThat(life.on(day("2026-02-28")).standing()).isEqualTo(new Standing.HasLeft(day("2026-02-27")));
    }

    @Test
    void aLeaveWithALastDayEndsByItselfAndOneWithoutOnlyByTheReturn() {
        WorkingLife known = life(
                on("2020-01-06", new Hired(SAWS)), on("2026-01-10", new LeaveBegan(Optional.of(day("2026-02-10")))));
        assertThat(known.on(day("2026-02-10")).standing())
                .isEqualTo(new Standing.OnLeave(day("2026-01-10"), Optional.of(day("2026-02-10"))));
        assertThat(known.on(day("2026-02-11")).standing()).isEqualTo(new Standing.Employed());
        assertThat(known.absences(day("2026-03-01")))
                .containsExactly(new Absence(Absence.Kind.LEAVE, day("2026-01-10"), Optional.of(day("2026-02-11"))));

        WorkingLife open = life(
                on("2020-01-06", new Hired(SAWS)),
                on("2026-01-10", new LeaveBegan(Optional.empty())),
                on("2026-08-01", new Returned()));
        assertThat(open.on(day("2026-07-31")).standing())
                .isEqualTo(new Standing.OnLeave(day("2026-01-10"), Optional.empty()));
        assertThat(open.on(day("2026-08-01")).standing()).isEqualTo(new Standing.Employed());
        assertThat(open.inconsistencies()).isEmpty();
    }

    @Test
    void whoReturnsOnTheDayAfterTheLeaveMayBeSaidToHaveReturned() {
        assertThat(misfits(
                        on("2020-01-06", new Hired(SAWS)),
                        on("2026-01-10", new LeaveBegan(Optional.of(day("2026-02-10")))),
                        on("2026-02-11", new Returned())))
                .isEmpty();
        assertThat(misfits(
                        on("2020-01-06", new Hired(SAWS)),
                        on("2026-01-10", new LeaveBegan(Optional.of(day("2026-02-10")))),
                        on("2026-02-12", new Returned())))
                .containsExactly(Inconsistency.Kind.NOT_ON_LEAVE);
    }

    @Test
    void aMoveChangesThePlaceFromItsDayOn() {
        WorkingLife life = life(on("2020-01-06", new Hired(SAWS)), on("2024-05-01", new Moved(CRANES)));
        assertThat(life.on(day("2024-04-30")).place()).isEqualTo(SAWS);
        assertThat(life.on(day("2024-05-01")).place()).isEqualTo(CRANES);
    }

    @Test
    void aRehireBeginsAnewWithoutEnrolmentAndTheTimeBetweenIsAnAbsence() {
        DatedEvent again = on("2024-03-01", new Hired(CRANES));
        WorkingLife life = life(
                on("2015-01-01", new Hired(SAWS)),
                on("2015-02-01", new Enrolled()),
                on("2018-12-31", new Left()),
                again);
        WorkState state = life.on(day("2024-03-01"));
        assertThat(state.hired()).contains(day("2024-03-01"));
        assertThat(state.lastDay()).isEmpty();
        assertThat(state.enrolledSince()).isEmpty();
        assertThat(state.place()).isEqualTo(CRANES);
        assertThat(life.isRehire(again)).isTrue();
        assertThat(life.isRehire(life.events().getFirst())).isFalse();
        assertThat(life.absences(day("2024-03-01")))
                .containsExactly(new Absence(
                        Absence.Kind.BETWEEN_EMPLOYMENTS, day("2019-01-01"), Optional.of(day("2024-03-01"))));
        assertThat(life.inconsistencies()).isEmpty();
    }

    @Test
    void whoComesBackIntoTheProgrammeKeepsTheFirstDayOfExposure() {
        WorkingLife life = life(
                on("2015-01-01", new Hired(SAWS)),
                on("2015-02-01", new Enrolled()),
                on("2018-01-01", new EnrolmentEnded()),
                on("2020-06-01", new Enrolled()));
        assertThat(life.on(day("2019-01-01")).enrolledSince()).isEmpty();
        assertThat(life.on(day("2021-01-01")).enrolledSince()).contains(day("2020-06-01"));
        assertThat(life.on(day("2021-01-01")).firstEnrolled()).contains(day("2015-02-01"));
        assertThat(life.absences(day("2021-01-01")))
                .extracting(Absence::kind)
                .containsExactly(Absence.Kind.NOT_ENROLLED);
    }

    @Test
    void whoGoesWithASoldPlantIsWithTheSuccessorFromTheNextDayOn() {
        WorkingLife life =
                life(on("2015-01-01", new Hired(SAWS)), on("2026-01-31", new TransferredToSuccessor("Larkmoor Glass")));
        assertThat(life.on(day("2026-01-31")).standing()).isEqualTo(new Standing.Employed());
        assertThat(life.on(day("2026-02-01")).standing())
                .isEqualTo(new Standing.WithSuccessor(day("2026-01-31"), "Larkmoor Glass"));
    }

    @Test
    void whoSupervisesFromDayToDayRecords() {
        WorkingLife life = life(
                on("2025-01-01", new Hired(SAWS)),
                on("2025-01-01", new Engaged(new Engagement(Kind.AGENCY, "Brightwater Staffing", true))),
                on("2025-06-01", new Engaged(new Engagement(Kind.CONTRACTOR, "Holt Refractories", false))),
                on("2025-09-01", new Engaged(Engagement.OWN)));
        assertThat(life.on(day("2025-01-01")).engagement().recordedHere()).isTrue();
        assertThat(life.on(day("2025-06-01")).engagement().recordedHere()).isFalse();
        assertThat(life.on(day("2025-09-01")).engagement().recordedHere()).isTrue();
    }

    @Test
    void anAgencyHasANameAndOwnPeopleHaveNone() {
        assertThatThrownBy(() -> new Engagement(Kind.AGENCY, " ", true)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Engagement(Kind.OWN, "Brightwater Staffing", true))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Engagement(Kind.OWN, "", false)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatDoesNotFitIsNamedAndKept() {
        assertThat(misfits(on("2020-01-01", new Left()), on("2021-01-01", new Hired(SAWS))))
                .containsExactly(Inconsistency.Kind.LEFT_BEFORE_HIRED);
        assertThat(misfits(on("2020-01-01", new Enrolled()), on("2021-01-01", new Hired(SAWS))))
                .containsExactly(Inconsistency.Kind.BEFORE_HIRED);
        assertThat(misfits(on("2020-01-01", new Hired(SAWS)), on("2021-01-01", new Hired(SAWS))))
                .containsExactly(Inconsistency.Kind.HIRED_WHILE_EMPLOYED);
        assertThat(misfits(
                        on("2020-01-01", new Hired(SAWS)), on("2021-01-01", new Left()), on("2022-01-01", new Left())))
                .containsExactly(Inconsistency.Kind.LEFT_ALREADY);
        assertThat(misfits(
                        on("2020-01-01", new Hired(SAWS)),
                        on("2021-01-01", new Left()),
                        on("2022-01-01", new Moved(CRANES))))
                .containsExactly(Inconsistency.Kind.AFTER_LEAVING);
        assertThat(misfits(on("2020-01-01", new Listed(SAWS)), on("2021-01-01", new Moved(SAWS))))
                .containsExactly(Inconsistency.Kind.MOVED_NOWHERE);
        assertThat(misfits(
                        on("2020-01-01", new Hired(SAWS)),
                        on("2020-02-01", new Enrolled()),
                        on("2021-02-01", new Enrolled())))
                .containsExactly(Inconsistency.Kind.ENROLLED_ALREADY);
        assertThat(misfits(on("2020-01-01", new Hired(SAWS)), on("2020-02-01", new EnrolmentEnded())))
                .containsExactly(Inconsistency.Kind.NOT_ENROLLED);
        assertThat(misfits(
                        on("2020-01-01", new Hired(SAWS)),
                        on("2020-02-01", new LeaveBegan(Optional.empty())),
                        on("2020-03-01", new LeaveBegan(Optional.empty()))))
                .containsExactly(Inconsistency.Kind.ON_LEAVE_ALREADY);
        assertThat(misfits(
                        on("2020-01-01", new Hired(SAWS)),
                        on("2020-02-01", new LeaveBegan(Optional.of(day("2020-01-15"))))))
                .containsExactly(Inconsistency.Kind.LEAVE_ENDS_BEFORE_IT_BEGINS);
    }

    /** 30 CFR 62.170(a)(3), from memory: more than six consecutive months. */
    @ParameterizedTest
    @CsvSource({"2026-07-10, false", "2026-07-11, true"})
    void sixMonthsAwayAreNotMoreThanSixMonths(LocalDate back, boolean more) {
        assertThat(new Absence(Absence.Kind.LEAVE, day("2026-01-10"), Optional.of(back))
                        .isMoreThanSixMonths(day("2027-01-01")))
                .isEqualTo(more);
    }

    @Test
    void whatIsEnteredAheadShowsInTheRosterButNotInTheStandingOfToday() {
        WorkingLife life = life(on("2020-01-06", new Hired(SAWS)), on("2026-04-30", new Left()));
        assertThat(life.on(day("2026-03-09")).lastDay()).isEmpty();
        assertThat(life.asEnteredOn(day("2026-03-09")).lastDay()).contains(day("2026-04-30"));
        assertThat(life.asEnteredOn(day("2026-03-09")).standing()).isEqualTo(new Standing.Employed());
    }

    @Test
    void theOrderInWhichEventsAreGivenDoesNotMatter() {
        List<DatedEvent> events = List.of(
                on("2015-01-01", new Hired(SAWS)),
                on("2015-01-01", new Enrolled()),
                on("2016-02-01", new Moved(CRANES)),
                on("2017-02-01", new LeaveBegan(Optional.of(day("2017-03-01")))),
                on("2018-12-31", new Left()),
                on("2020-01-01", new Hired(SAWS)));
        WorkingLife inOrder = WorkingLife.of(events);
        Random random = new Random(20260309);
        for (int i = 0; i < 200; i++) {
            List<DatedEvent> shuffled = new ArrayList<>(events);
            Collections.shuffle(shuffled, random);
            WorkingLife life = WorkingLife.of(shuffled);
            LocalDate any = day("2014-06-01").plusDays(random.nextInt(3000));
            assertThat(life.on(any)).isEqualTo(inOrder.on(any));
            assertThat(life.inconsistencies()).isEmpty();
        }
    }
}
