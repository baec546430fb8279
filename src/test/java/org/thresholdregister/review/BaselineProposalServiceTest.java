package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.Profession;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.review.ProposalResult.Answered;
import org.thresholdregister.review.ProposalResult.Objection;
import org.thresholdregister.review.ProposalResult.Refused;

/** Today is 9 March 2026. P-1 has worsened for good on the left, P-2 of another site has improved on the right. */
@RegisterTest
class BaselineProposalServiceTest {

    private static final LocalDate TODAY = MovableClock.FIRST_DAY;
    private static final LocalDate PROPOSED = LocalDate.of(2022, 3, 1);

    @Autowired
    private BaselineProposalService proposals;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private DecisionService decisions;

    @Autowired
    private TestImports files;

    @Autowired
    private MovableClock clock;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoWorkersWithProposals() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,department,enrolled_from
                P-1,1950-05-01,M,Orrin,Bela,Mill,Saws,2020-01-01
                P-2,1950-01-01,F,Quill,Cato,Yard,Cranes,2020-01-01
                P-3,1950-01-01,F,Rusk,Dara,Mill,Press,2020-01-01
                """,
                AUDIOGRAM_COLUMNS
                        + test("P-1", "2021-03-01", "baseline", 10, 10)
                        + test("P-1", "2022-03-01", "annual", 25, 10)
                        + test("P-1", "2023-03-01", "annual", 30, 10)
                        + test("P-1", "2024-03-01", "annual", 30, 10)
                        + test("P-2", "2023-03-01", "baseline", 10, 30)
                        + test("P-2", "2024-03-01", "annual", 10, 20)
                        + test("P-2", "2025-03-01", "annual", 10, 15)
                        + test("P-3", "2025-03-01", "baseline", 10, 10),
                "");
    }

    private List<ProposalRow> all() {
        return proposals.find(ProposalFilter.EVERYTHING, Order.ascending(ProposalColumn.OPEN_SINCE), 0, 10);
    }

    private static ProposalAnswer answer(boolean accepted, LocalDate decidedOn) {
        return new ProposalAnswer(
                Ear.LEFT,
                PROPOSED,
                accepted,
                decidedOn,
                "Dr. Vale",
                Optional.of(Profession.AUDIOLOGIST),
                "seen in both years");
    }

    @Test
    void whatTheRulesProposeIsListedWithItsAge() {
        assertThat(all())
                .containsExactly(
                        new ProposalRow(
                                "P-1",
                                "Orrin",
                                "Bela",
                                "Mill",
                                "Saws",
                                Ear.LEFT,
                                BaselineChange.Kind.PERSISTENT_SHIFT,
                                LocalDate.of(2021, 3, 1),
                                PROPOSED,
                                PROPOSED,
                                LocalDate.of(2023, 3, 1),
                                1104),
                        new ProposalRow(
                                "P-2",
                                "Quill",
                                "Cato",
                                "Yard",
                                "Cranes",
                                Ear.RIGHT,
                                BaselineChange.Kind.PERSISTENT_IMPROVEMENT,
                                LocalDate.of(2023, 3, 1),
                                LocalDate.of(2025, 3, 1),
                                LocalDate.of(2024, 3, 1),
                                LocalDate.of(2025, 3, 1),
                                373));
        for (ProposalColumn column : ProposalColumn.values()) {
            assertThat(proposals.find(ProposalFilter.EVERYTHING, Order.descending(column), 0, 1))
                    .as(column.name())
                    .hasSize(1);
        }
    }

    @Test
    void theFilterNarrowsTheList() {
        assertThat(proposals.count(new ProposalFilter(
                        Optional.of(BaselineChange.Kind.PERSISTENT_SHIFT), Optional.empty(), Optional.empty(), "")))
                .isEqualTo(1);
        assertThat(proposals.count(
                        new ProposalFilter(Optional.empty(), Optional.of("Yard"), Optional.of("Cranes"), "quill")))
                .isEqualTo(1);
        assertThat(proposals.count(
                        new ProposalFilter(Optional.empty(), Optional.of("Mill"), Optional.empty(), "quill")))
                .isZero();
    }

    @Test
    void aPersonOfOneSiteSeesAndAnswersNothingOfTheOther() {
        SignIn.as(Role.SAFETY_OFFICER, "Yard");

        assertThat(all()).extracting(ProposalRow::workerId).containsExactly("P-2");
        assertThat(proposals.open("P-1", Ear.LEFT)).isEmpty();
        assertThat(proposals.outlook("P-1", answer(true, TODAY))).isEmpty();
        assertThat(proposals.answer("P-1", answer(true, TODAY))).isEqualTo(new Refused(Objection.NO_SUCH_PROPOSAL));
        assertThat(jdbc.queryForList("select * from decision")).isEmpty();
    }

    @Test
    void openingOneIsOnTheAuditTrailAndANurseOnlyReads() {
        SignIn.as(Role.NURSE);

        OpenedProposal opened = proposals.open("P-1", Ear.LEFT).orElseThrow();

        assertThat(opened.mayAnswer()).isFalse();
        assertThat(opened.about().proposal().to().date()).isEqualTo(PROPOSED);
        assertThat(proposals.open("P-1", Ear.RIGHT)).isEmpty();
        assertThat(jdbc.queryForList(
                        "select subject_id from audit_event where action = 'WORKER_RECORD_OPENED' and actor ="
                                + " 'test-nurse'",
                        String.class))
                .contains("P-1");
        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(proposals.open("P-1", Ear.LEFT).orElseThrow().mayAnswer()).isTrue();
    }

    @Test
    void anAcceptedProposalIsTheBaselineOfLaterTests() {
        assertThat(proposals.answer("P-1", answer(true, TODAY))).isEqualTo(new Answered());

        assertThat(all()).extracting(ProposalRow::workerId).containsExactly("P-2");
        assertThat(jdbc.queryForList("select ears, test_date, kind, decided_by, reason, entered_by from decision"))
                .containsExactly(Map.of(
                        "ears",
                        "left",
                        "test_date",
                        java.sql.Date.valueOf(PROPOSED),
                        "kind",
                        "baseline",
                        "decided_by",
                        "Dr. Vale, audiologist",
                        "reason",
                        "seen in both years",
                        "entered_by",
                        "test-safety_officer"));
        assertThat(jdbc.queryForList("select detail from audit_event where action = 'DECISION_ENTERED'", String.class))
                .containsExactly("baseline, left, test of 2022-03-01");
        assertThat(jdbc.queryForObject(
                        "select baseline_date from determination where test_date = date '2024-03-01' and ear = 'left'"
                                + " and purpose = 'annual' and shift_2000 = 20",
                        LocalDate.class))
                .as("a test made before the decision stands as it was judged")
                .isEqualTo(LocalDate.of(2021, 3, 1));

        clock.moveTo(LocalDate.of(2026, 4, 2));
        files.store("", AUDIOGRAM_COLUMNS + test("P-1", "2026-04-01", "annual", 30, 10), "");
        assertThat(jdbc.queryForMap("select baseline_date, sts from determination where ear = 'left' and test_date ="
                        + " date '2026-04-01'"))
                .isEqualTo(Map.of("baseline_date", java.sql.Date.valueOf(PROPOSED), "sts", "no"));
    }

    @Test
    void aDeclinedProposalIsNotListedAgainUntilALaterPair() {
        List<String> before = determinations();

        assertThat(proposals.answer("P-1", answer(false, TODAY))).isEqualTo(new Answered());

        assertThat(determinations()).isEqualTo(before);
        assertThat(jdbc.queryForList("select kind from decision", String.class)).containsExactly("baseline-kept");
        assertThat(all())
                .extracting(row -> row.workerId() + " " + row.to())
                .containsExactly("P-1 2023-03-01", "P-2 2025-03-01");
        assertThat(proposals.answer("P-1", answer(false, TODAY))).isEqualTo(new Refused(Objection.NO_SUCH_PROPOSAL));
    }

    private List<String> determinations() {
        return jdbc.queryForList(
                "select test_date || ear || outcome || coalesce(recordable, '') || coalesce(cast(baseline_date as"
                        + " varchar), '') from determination order by 1",
                String.class);
    }

    @Test
    void aDeclineThatComesWithAFileIsKnownToo() {
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                P-2,right,2025-03-01,baseline-kept,2025-04-01,"Dr. Vale, audiologist",wait for another
                """);

        assertThat(all()).extracting(ProposalRow::workerId).containsExactly("P-1");
    }

    @Test
    void theOutlookSaysWhatWouldChangeAndStoresNothing() {
        assertThat(proposals.outlook("P-1", answer(true, TODAY)))
                .containsExactly(
                        "Tests of the left ear made after 9 Mar 2026 are compared with the annual test of 1 Mar 2022, no"
                                + " longer with the baseline test of 1 Mar 2021.",
                        "No determination on record changes, and nothing that is owed.");
        assertThat(proposals.outlook("P-1", answer(true, LocalDate.of(2023, 6, 1))))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("Annual test of 1 Mar 2024, left ear: no shift")
                        .contains("(before: shift confirmed"));
        assertThat(proposals.outlook("P-1", answer(false, TODAY)))
                .contains(
                        "The baseline of the left ear stays the baseline test of 1 Mar 2021, and the test of 1 Mar 2022 is"
                                + " not proposed for this ear again.")
                .last()
                .isEqualTo("The tests on record then give another proposal for this ear: the test of 1 Mar 2023, for a"
                        + " lasting worsening.");
        assertThat(jdbc.queryForList("select * from decision")).isEmpty();
    }

    @Test
    void anAnswerNeedsItsProfessionalAndItsReason() {
        Map<ProposalAnswer, Objection> refused = Map.of(
                new ProposalAnswer(Ear.LEFT, PROPOSED, true, TODAY, " ", Optional.of(Profession.PHYSICIAN), "seen"),
                Objection.PROFESSIONAL_MISSING,
                new ProposalAnswer(Ear.LEFT, PROPOSED, false, TODAY, "Dr. Vale", Optional.empty(), "seen"),
                Objection.PROFESSIONAL_MISSING,
                new ProposalAnswer(Ear.LEFT, PROPOSED, true, TODAY, "Dr. Vale", Optional.of(Profession.PHYSICIAN), " "),
                Objection.REASON_MISSING,
                answer(true, LocalDate.of(2023, 2, 28)),
                Objection.BEFORE_THE_EVIDENCE,
                answer(false, TODAY.plusDays(1)),
                Objection.IN_THE_FUTURE,
                new ProposalAnswer(
                        Ear.LEFT,
                        PROPOSED,
                        true,
                        TODAY,
                        "x".repeat(BaselineProposalService.LONGEST_NAME + 1),
                        Optional.of(Profession.PHYSICIAN),
                        "seen"),
                Objection.TEXT_TOO_LONG,
                new ProposalAnswer(
                        Ear.RIGHT, PROPOSED, true, TODAY, "Dr. Vale", Optional.of(Profession.PHYSICIAN), "seen"),
                Objection.NO_SUCH_PROPOSAL);

        refused.forEach((answer, objection) ->
                assertThat(proposals.answer("P-1", answer)).isEqualTo(new Refused(objection)));

        assertThat(jdbc.queryForList("select * from decision")).isEmpty();
        assertThat(all()).hasSize(2);
    }

    @Test
    void theWorkersPageKnowsTheSameProposals() {
        assertThat(records.open("P-1").orElseThrow().openProposals())
                .singleElement()
                .satisfies(proposal -> assertThat(proposal.to().date()).isEqualTo(PROPOSED));
        assertThat(records.open("P-3").orElseThrow().openProposals()).isEmpty();
    }

    @Test
    void anEarlierEditionOfTheRulesIsJudgedAnew() {
        jdbc.update("delete from baseline_proposal");
        assertThat(all()).isEmpty();
        jdbc.update("update worker_judgement set rule_edition = 0");
        clock.moveTo(TODAY.plusDays(1));

        assertThat(all()).hasSize(2);
        assertThat(decisions.kindsToEnter()).contains(DecisionKind.BASELINE_KEPT);
    }
}
