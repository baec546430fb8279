package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Engagement;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.employment.WorkingLife;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/**
 * What follows from a working life. The paragraphs are those of the regulation texts and letters that the sentences name;
 * those marked "from memory" and "read in part" were not read whole.
 */
class WorkingLifeWordsTest {

    private static final Placement SAWS = new Placement("Mill", "Saws", "Sawyer");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);
    private static final RuleSet MINES = RuleSets.find("msha").orElseThrow();

    private static DatedEvent on(String iso, WorkEvent event) {
        return new DatedEvent(LocalDate.parse(iso), event);
    }

    private static List<String> said(RuleSet rules, boolean hasTest, DatedEvent... later) {
        List<DatedEvent> events = Stream.concat(
                        Stream.of(on("2015-01-01", new WorkEvent.Hired(SAWS))), Stream.of(later))
                .toList();
        return WorkingLifeWords.consequences(WorkingLife.of(events), TODAY, rules, hasTest).stream()
                .map(Sentence::withBasis)
                .toList();
    }

    @Test
    void aRehireMayGoOnWithTheFirstBaseline() {
        assertThat(said(
                        RuleSets.OSHA,
                        true,
                        on("2018-12-31", new WorkEvent.Left()),
                        on("2026-03-01", new WorkEvent.Hired(SAWS))))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("Hired again on 1 Mar 2026: the first baseline may go on")
                        .endsWith("[OSHA letter, 8 February 2005 (read in part)]"))
                .anySatisfy(sentence -> assertThat(sentence).contains("[OSHA letter, 22 January 1996, archived]"))
                .noneSatisfy(sentence -> assertThat(sentence).contains("30 CFR"));
    }

    @Test
    void aMineMayTakeANewBaselineOnlyAfterMoreThanSixMonthsAway() {
        DatedEvent leave = on("2025-01-10", new WorkEvent.LeaveBegan(Optional.empty()));
        assertThat(said(MINES, true, leave, on("2025-07-11", new WorkEvent.Returned())))
                .containsExactly(
                        "On leave from 10 Jan 2025 to 10 Jul 2025, more than six consecutive months away from the"
                                + " mine: a new baseline may be taken. [30 CFR 62.170(a)(3), from memory]");
        assertThat(said(MINES, true, leave, on("2025-07-10", new WorkEvent.Returned())))
                .containsExactly(
                        "On leave from 10 Jan 2025 to 9 Jul 2025: no new baseline. A change of enrolment makes none,"
                                + " nor do six months or less away from the mine. [30 CFR 62.170(a)(3), from memory]");
        assertThat(said(RuleSets.OSHA, true, leave, on("2025-07-11", new WorkEvent.Returned())))
                .as("29 CFR 1910.95 says nothing of a leave")
                .isEmpty();
    }

    @Test
    void aDueDateStandsDuringALeaveSinceNoTextSaysOtherwise() {
        assertThat(said(RuleSets.OSHA, true, on("2026-02-01", new WorkEvent.LeaveBegan(Optional.empty()))))
                .containsExactly(
                        "No paragraph that was looked up says that a due date waits for the end of a leave: each stands as"
                                + " it is.",
                        "A test that falls due during the leave is made soon after the return. [common practice]");
    }

    @Test
    void whoLeavesIsOwedNoAnnualTestAndAnExitTestByPracticeOnly() {
        assertThat(said(RuleSets.OSHA, true, on("2026-02-27", new WorkEvent.Left())))
                .hasSize(4)
                .anySatisfy(sentence -> assertThat(sentence).endsWith("[29 CFR 1910.95(g)(6)]"))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("A test at the end is not asked for by 29 CFR 1910.95.")
                        .contains("common practice"))
                .anySatisfy(sentence -> assertThat(sentence).endsWith("[29 CFR 1910.95(m)(3)]"))
                .anySatisfy(sentence -> assertThat(sentence).endsWith("[29 CFR 1904.33(a)]"));
    }

    @Test
    void whatALastDayMeansIsSaidBeforeItHasCome() {
        assertThat(said(RuleSets.OSHA, true, on("2026-04-30", new WorkEvent.Left())))
                .isEqualTo(said(RuleSets.OSHA, true, on("2026-02-27", new WorkEvent.Left())));
    }

    @Test
    void recordsBaselinesAndLogGoToTheSuccessor() {
        DatedEvent sold = on("2026-01-31", new WorkEvent.TransferredToSuccessor("Larkmoor Glass"));
        assertThat(said(RuleSets.OSHA, true, sold))
                .hasSize(4)
                .allSatisfy(sentence -> assertThat(sentence)
                        .endsWith("]")
                        .containsAnyOf(
                                "[29 CFR 1910.95(m)(5)]",
                                "[29 CFR 1910.1020(h), from memory]",
                                "[29 CFR 1904.34]",
                                "[OSHA letters, 27 April 2004 and 5 December 2008 (read in part)]"));
        assertThat(said(MINES, true, sold))
                .anySatisfy(sentence -> assertThat(sentence).endsWith("[30 CFR 62.190]"));
    }

    @Test
    void whoComesBackIntoTheProgrammeGetsNoNewBaseline() {
        assertThat(said(
                        RuleSets.OSHA,
                        true,
                        on("2015-02-01", new WorkEvent.Enrolled()),
                        on("2018-01-01", new WorkEvent.EnrolmentEnded()),
                        on("2020-06-01", new WorkEvent.Enrolled())))
                .containsExactly(
                        "Back in the programme since 1 Jun 2020: no new baseline is taken; that would be a revision."
                                + " [OSHA letter, 31 January 2011 (read in part)]");
    }

    @Test
    void aBaselineIsDueSixMonthsAfterEnrolment() {
        assertThat(said(RuleSets.OSHA, false, on("2026-01-15", new WorkEvent.Enrolled())))
                .containsExactly(
                        "Enrolled from 15 Jan 2026 and not tested yet: the baseline test is due within 6 months, by"
                                + " 15 Jul 2026, holidays not counted. [29 CFR 1910.95(g)(5)(i)]");
    }

    @Test
    void theEmployerThatSupervisesFromDayToDayRecordsOnce() {
        assertThat(said(
                        RuleSets.OSHA,
                        true,
                        on(
                                "2025-01-01",
                                new WorkEvent.Engaged(
                                        new Engagement(Engagement.Kind.AGENCY, "Brightwater Staffing", true)))))
                .anySatisfy(sentence -> assertThat(sentence)
                        .contains("goes on this employer's log, once")
                        .endsWith("[29 CFR 1904.31(a), (b)(2)-(4)]"));
        assertThat(said(
                        RuleSets.OSHA,
                        true,
                        on(
                                "2025-01-01",
                                new WorkEvent.Engaged(
                                        new Engagement(Engagement.Kind.CONTRACTOR, "Holt Refractories", false)))))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("Holt Refractories supervises from day to day and records a case, once"));
    }

    @Test
    void aMoveToAnotherSiteSaysWhoSeesTheRecord() {
        assertThat(said(
                        RuleSets.OSHA,
                        true,
                        on("2026-03-02", new WorkEvent.Moved(new Placement("Yard", "Cranes", "Driver")))))
                .contains(
                        "Since 2 Mar 2026 the whole record is open to those of Yard, earlier tests included; those of Mill"
                                + " see it no more.");
        assertThat(said(
                        RuleSets.OSHA,
                        true,
                        on("2026-03-02", new WorkEvent.Moved(new Placement("Mill", "Cranes", "Driver")))))
                .noneSatisfy(sentence -> assertThat(sentence).contains("open to those of"));
    }

    @Test
    void everyKindOfMisfitHasASentence() {
        for (Inconsistency.Kind kind : Inconsistency.Kind.values()) {
            assertThat(WorkingLifeWords.inconsistency(kind)).endsWith(".");
        }
    }
}
