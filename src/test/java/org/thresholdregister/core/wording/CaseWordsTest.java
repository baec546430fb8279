package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.CaseMove;
import org.thresholdregister.core.caselife.Refusal;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Case;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;

class CaseWordsTest {

    private static WorkerCases cases(Case of) {
        JudgingOptions options = JudgingOptions.asOf(LocalDate.parse("2026-06-30"));
        return WorkerCases.of(of.history(), Judge.judge(of.history(), options), options);
    }

    private static Case shiftOfTheLeftEar() {
        return new Case()
                .test("2023-04-03", TestPurpose.BASELINE, 15, 15)
                .test("2026-04-01", TestPurpose.ANNUAL, 30, 15);
    }

    @Test
    void aLifeReadsAsItWent() {
        CaseLife life = cases(shiftOfTheLeftEar()
                        .test("2026-04-11", TestPurpose.RETEST, 30, 30)
                        .decided("2026-04-01", Ears.BOTH, DecisionKind.RECORDED, "2026-04-15")
                        .decided("2026-04-01", Ears.LEFT, DecisionKind.LINED_OUT, "2026-04-20")
                        .decided("2026-04-01", Ears.LEFT, DecisionKind.RECORDED, "2026-04-25"))
                .cases()
                .getFirst();
        assertThat(life.history().stream().map(CaseWords::event))
                .containsExactly(
                        "shift found by the annual test of 1 Apr 2026",
                        "shift found by the retest of 11 Apr 2026",
                        "shift confirmed by the retest of 11 Apr 2026",
                        "found recordable",
                        "recorded on the injury log",
                        "lined out on the injury log",
                        "recorded on the injury log again");
        assertThat(CaseWords.state(life)).isEqualTo("both ears: shift confirmed, recordable, on the injury log");
        assertThat(life.owed().stream().map(CaseWords::owed))
                .containsExactly(
                        "Written notice by 2 May 2026, both ears",
                        "Fitting or refitting protectors, both ears; the rule gives no date",
                        "Training in the use of protectors, both ears; the rule gives no date");
    }

    @Test
    void aShiftThatNobodyRetestedStandsByTime() {
        CaseLife life = cases(shiftOfTheLeftEar()).cases().getFirst();
        assertThat(CaseWords.event(life.history().get(1)))
                .isEqualTo("shift confirmed, as no retest settled it in time");
        assertThat(CaseWords.state(life)).isEqualTo("left ear: shift confirmed, recordable and not on the log yet");
    }

    @Test
    void whatNotWorkRelatedLiftsIsSaidWithItsCondition() {
        CaseLife life = cases(shiftOfTheLeftEar()
                        .decided("2026-04-01", Ears.LEFT, DecisionKind.NOT_WORK_RELATED, "2026-04-15"))
                .cases()
                .getFirst();
        assertThat(life.lifted().stream()
                        .map(owed -> CaseWords.lifted(owed, life.afterShift().liftedBy()))
                        .findFirst())
                .hasValue("Fitting or refitting protectors is not owed for the left ear where it was a physician who"
                        + " found the loss not work-related; anybody else's finding leaves it owed.");
    }

    @Test
    void aDecisionWithoutACaseSaysWhatItNames() {
        assertThat(cases(shiftOfTheLeftEar().decided("2026-04-01", Ears.RIGHT, DecisionKind.NOTICE_GIVEN, "2026-04-15"))
                        .withoutCase())
                .extracting(CaseWords::withoutCase)
                .containsExactly("Written notice given on 15 Apr 2026, right ear, names the test of 1 Apr 2026, which"
                        + " opened no case of this ear. It is kept as it came.");
    }

    @ParameterizedTest
    @EnumSource(Refusal.class)
    void everyRefusalIsASentence(Refusal why) {
        assertThat(CaseWords.refusal(why)).matches("[A-Z].*\\.");
        assertThat(CaseWords.objection(new WorkerCases.Objection(Ear.RIGHT, why)))
                .isEqualTo("Right ear: " + CaseWords.refusal(why));
    }

    @Test
    void onlyWhatPeopleDoHasAWordForDoingIt() {
        assertThat(CaseMove.byPeople())
                .allSatisfy(move -> assertThat(CaseWords.move(move)).isNotBlank());
        assertThatIllegalArgumentException().isThrownBy(() -> CaseWords.move(CaseMove.CONFIRMED));
    }
}
