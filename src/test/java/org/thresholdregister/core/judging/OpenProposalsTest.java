package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.audiometry.TestPurpose.ANNUAL;
import static org.thresholdregister.core.audiometry.TestPurpose.BASELINE;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.DecisionKind;

/** The two rules of 49 CFR 227 Appendix C, with what a professional has answered. */
class OpenProposalsTest {

    private static final String TODAY = "2026-03-09";

    /** Worse on the left from 2021 on: 10, then 25, 25, 30, 30. */
    private static Case worsening() {
        return new Case()
                .test("2020-03-01", BASELINE, 10, 10)
                .test("2021-03-01", ANNUAL, 25, 10)
                .test("2022-03-01", ANNUAL, 25, 10)
                .test("2023-03-01", ANNUAL, 30, 10)
                .test("2024-03-01", ANNUAL, 30, 10);
    }

    private static List<String> open(Case history) {
        return OpenProposals.of(
                        history.history(),
                        history.with(BaselineRevision.PROPOSE).asOf(TODAY))
                .stream()
                .map(proposal -> proposal.ear().word() + " " + proposal.kind().word() + " "
                        + proposal.from().date() + " to " + proposal.to().date() + " on " + proposal.evidence())
                .toList();
    }

    @Test
    void aShiftThatLastsIsProposedForItsEar() {
        assertThat(open(worsening()))
                .containsExactly("left worse 2020-03-01 to 2021-03-01 on [2021-03-01, 2022-03-01]");
    }

    @Test
    void eachEarHasItsOwn() {
        Case both = new Case()
                .test("2020-03-01", BASELINE, 10, 30)
                .test("2021-03-01", ANNUAL, 25, 25)
                .test("2022-03-01", ANNUAL, 25, 20);

        assertThat(open(both))
                .containsExactly(
                        "left worse 2020-03-01 to 2021-03-01 on [2021-03-01, 2022-03-01]",
                        "right better 2020-03-01 to 2022-03-01 on [2021-03-01, 2022-03-01]");
    }

    @Test
    void anAcceptedProposalIsSettledAndTheNextOneComes() {
        Case accepted = worsening().test("2025-03-01", ANNUAL, 40, 10).test("2026-03-01", ANNUAL, 40, 10);
        assertThat(open(accepted)).hasSize(1).first().asString().contains("to 2021-03-01");

        accepted.decided("2021-03-01", Ears.LEFT, DecisionKind.BASELINE, TODAY);

        assertThat(open(accepted)).containsExactly("left worse 2021-03-01 to 2025-03-01 on [2025-03-01, 2026-03-01]");
    }

    @Test
    void aDeclinedProposalIsNotMadeAgainAndALaterPairMayBe() {
        Case declined = worsening().decided("2021-03-01", Ears.LEFT, DecisionKind.BASELINE_KEPT, "2022-06-01");

        assertThat(open(declined)).containsExactly("left worse 2020-03-01 to 2022-03-01 on [2022-03-01, 2023-03-01]");

        declined.decided("2022-03-01", Ears.BOTH, DecisionKind.BASELINE_KEPT, "2023-06-01");
        assertThat(open(declined)).containsExactly("left worse 2020-03-01 to 2023-03-01 on [2023-03-01, 2024-03-01]");

        declined.decided("2023-03-01", Ears.LEFT, DecisionKind.BASELINE_KEPT, "2024-06-01");
        assertThat(open(declined)).isEmpty();
    }

    @Test
    void aDeclinedImprovementIsNotMadeAgainAndALaterPairMayBe() {
        Case better = new Case()
                .test("2020-03-01", BASELINE, 30, 10)
                .test("2021-03-01", ANNUAL, 20, 10)
                .test("2022-03-01", ANNUAL, 25, 10)
                .decided("2021-03-01", Ears.LEFT, DecisionKind.BASELINE_KEPT, "2022-06-01");
        assertThat(open(better)).isEmpty();

        better.test("2023-03-01", ANNUAL, 20, 10);
        assertThat(open(better)).containsExactly("left better 2020-03-01 to 2023-03-01 on [2022-03-01, 2023-03-01]");
    }

    @Test
    void decliningOneEarLeavesTheOther() {
        Case both = new Case()
                .test("2020-03-01", BASELINE, 10, 10)
                .test("2021-03-01", ANNUAL, 25, 25)
                .test("2022-03-01", ANNUAL, 25, 25)
                .decided("2021-03-01", Ears.RIGHT, DecisionKind.BASELINE_KEPT, "2022-06-01");

        assertThat(open(both)).singleElement().asString().startsWith("left");
    }

    @Test
    void aBaselineThatAPersonChoseSinceSettlesWhatWasProposedBefore() {
        assertThat(open(worsening().decided("2020-03-01", Ears.LEFT, DecisionKind.BASELINE, TODAY)))
                .isEmpty();
        assertThat(open(worsening().decided("2020-03-01", Ears.RIGHT, DecisionKind.BASELINE, TODAY)))
                .hasSize(1);
    }

    @Test
    void decliningChangesNoDetermination() {
        Case plain = worsening();
        WorkerJudgement before = plain.asOf(TODAY);
        plain.decided("2021-03-01", Ears.LEFT, DecisionKind.BASELINE_KEPT, "2022-06-01");

        assertThat(plain.asOf(TODAY)).isEqualTo(before);
    }

    @Test
    void whatIsProposedIsWhatApplyWouldDoWithoutWhatWasDeclined() {
        Case declined = worsening().decided("2021-03-01", Ears.LEFT, DecisionKind.BASELINE_KEPT, "2022-06-01");

        List<BaselineChange> applied =
                declined.with(BaselineRevision.APPLY).asOf(TODAY).proposals();

        assertThat(applied).noneMatch(change -> change.to().date().equals(LocalDate.of(2021, 3, 1)));
        assertThat(declined.with(BaselineRevision.PROPOSE).asOf(TODAY).proposals())
                .isEqualTo(applied);
    }

    @Test
    void theCaseShowsBothTestsOfThePairAndWhatLaterTestsWouldBe() {
        ProposalCase about = ProposalCase.open(
                        worsening().history(), JudgingOptions.asOf(LocalDate.parse(TODAY)), Ear.LEFT)
                .orElseThrow();

        assertThat(about.evidence())
                .extracting(shift -> shift.later().date().getYear() + ": "
                        + shift.sum().exact().getAsInt())
                .containsExactly("2021: 45", "2022: 45");
        assertThat(about.laterTests())
                .extracting(later -> later.fromPresentBaseline().sum().exact().getAsInt() + " -> "
                        + later.fromProposedBaseline().sum().exact().getAsInt())
                .containsExactly("45 -> 0", "60 -> 15", "60 -> 15");
        assertThat(ProposalCase.open(worsening().history(), JudgingOptions.asOf(LocalDate.parse(TODAY)), Ear.RIGHT))
                .isEmpty();
    }
}
