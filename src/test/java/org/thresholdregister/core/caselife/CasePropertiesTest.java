package org.thresholdregister.core.caselife;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.NoticeRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/** What holds for the cases of any history, legal decisions or not. */
class CasePropertiesTest {

    private static final int HISTORIES = 2000;

    /** Hands over histories, each to be looked at by another rule set. */
    private static void byEveryRuleSet(long seed, BiConsumer<WorkerHistory, JudgingOptions> check) {
        AtomicInteger next = new AtomicInteger();
        RandomHistories.check(seed, HISTORIES, true, (history, options) -> {
            RuleSet ruleSet = RuleSets.ALL.get(next.getAndIncrement() % RuleSets.ALL.size());
            check.accept(
                    history,
                    new JudgingOptions(options.asOf(), ruleSet, options.ageCorrection(), options.baselineRevision()));
        });
    }

    /** A notice of a test without a shift belongs to no case. */
    private static boolean tellsOfEveryTest(RuleSet ruleSet) {
        return ruleSet.notice()
                .filter(notice -> notice.occasion() == NoticeRule.Occasion.EVERY_TEST)
                .isPresent();
    }

    private static WorkerCases cases(WorkerHistory history, JudgingOptions options) {
        return WorkerCases.of(history, Judge.judge(history, options), options);
    }

    @Test
    void theOrderOfTheInputDoesNotMatter() {
        Random random = new Random(7);
        byEveryRuleSet(11, (history, options) -> {
            List<Decision> decisions = new ArrayList<>(history.decisions());
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            Collections.shuffle(decisions, random);
            Collections.shuffle(audiograms, random);
            WorkerHistory shuffled = new WorkerHistory(history.worker(), audiograms, decisions);
            assertThat(described(cases(shuffled, options))).isEqualTo(described(cases(history, options)));
        });
    }

    private static List<Object> described(WorkerCases cases) {
        List<Object> all = new ArrayList<>(cases.withoutCase());
        for (CaseLife life : cases.cases()) {
            all.addAll(List.of(life.testDate(), life.history(), life.owed(), life.lifted(), life.nextMoves()));
            all.add(life.closedOn());
        }
        return all;
    }

    @Test
    void whatIsDerivedIsAlwaysALegalMoveAndDaysNeverRunBackwards() {
        AtomicInteger derived = new AtomicInteger();
        byEveryRuleSet(12, (history, options) -> {
            for (CaseLife life : cases(history, options).cases()) {
                for (CaseEvent event : life.history()) {
                    if (event.decision().isEmpty()) {
                        assertThat(event.note()).as("%s", event).isEmpty();
                        derived.incrementAndGet();
                    }
                    assertThat(event.day()).isBeforeOrEqualTo(options.asOf());
                }
                assertThat(life.history()).extracting(CaseEvent::day).isSorted();
                assertThat(life.isClosed())
                        .isEqualTo(Stream.of(Ear.values())
                                .flatMap(ear -> life.state(ear).stream())
                                .allMatch(
                                        state -> state.refusal(CaseMove.CLOSED).isEmpty()));
            }
        });
        assertThat(derived).hasValueGreaterThan(HISTORIES);
    }

    @Test
    void everyDecisionIsShownSomewhere() {
        byEveryRuleSet(13, (history, options) -> {
            WorkerCases cases = cases(history, options);
            Set<Object> shown = new HashSet<>();
            cases.withoutCase().forEach(without -> shown.add(List.of(without.decision(), without.ear())));
            for (CaseLife life : cases.cases()) {
                for (CaseEvent event : life.history()) {
                    event.decision().ifPresent(decision -> {
                        for (Ear ear : Ear.values()) {
                            if (event.ears().include(ear)) {
                                shown.add(List.of(decision, ear));
                            }
                        }
                    });
                }
            }
            for (Decision decision : history.decisions()) {
                boolean isAboutACase = !Set.of(
                                DecisionKind.BASELINE, DecisionKind.BASELINE_KEPT, DecisionKind.INVALID_TEST)
                        .contains(decision.kind());
                boolean isToldAnyway =
                        decision.kind() == DecisionKind.NOTICE_GIVEN && tellsOfEveryTest(options.ruleSet());
                for (Ear ear : Ear.values()) {
                    if (isAboutACase
                            && !isToldAnyway
                            && decision.ears().include(ear)
                            && !decision.decidedOn().isAfter(options.asOf())) {
                        assertThat(shown).contains(List.of(decision, ear));
                    }
                }
            }
        });
    }

    @Test
    void whatTheCasesOweIsWhatTheFollowUpsSay() {
        AtomicInteger owed = new AtomicInteger();
        byEveryRuleSet(14, (history, options) -> {
            WorkerJudgement judgement = Judge.judge(history, options);
            if (twoJudgedOnOneDay(judgement)) {
                return;
            }
            Set<List<Object>> byFollowUps = judgement.followUps().stream()
                    .filter(followUp -> followUp.kind() == FollowUpKind.RECORD
                            || followUp.kind() == FollowUpKind.NOTICE && !tellsOfEveryTest(options.ruleSet()))
                    .map(CasePropertiesTest::described)
                    .collect(Collectors.toSet());
            Set<List<Object>> byCases = new HashSet<>();
            for (CaseLife life : WorkerCases.of(history, judgement, options).cases()) {
                for (Owed duty : life.owed()) {
                    if (duty.duty() == CaseDuty.RECORD
                            || duty.duty() == CaseDuty.NOTICE && !tellsOfEveryTest(options.ruleSet())) {
                        byCases.add(List.of(
                                duty.duty().name(),
                                life.testDate(),
                                duty.ears(),
                                duty.by().orElseThrow()));
                    }
                }
            }
            owed.addAndGet(byCases.size());
            assertThat(byCases).isEqualTo(byFollowUps);
        });
        assertThat(owed).hasValueGreaterThan(500);
    }

    private static List<Object> described(FollowUp followUp) {
        LocalDate test = followUp.testDate().orElseThrow();
        return List.of(followUp.kind().name(), test, followUp.ears(), followUp.dueDate());
    }

    /** Follow-ups go by test, cases by day; they differ where two tests of one day are both judged. */
    private static boolean twoJudgedOnOneDay(WorkerJudgement judgement) {
        List<List<Object>> days = judgement.determinations().stream()
                .filter(Judged.class::isInstance)
                .map(determination -> List.<Object>of(determination.test().date(), determination.ear()))
                .toList();
        return new HashSet<>(days).size() < days.size();
    }

    @Test
    void everyShiftFoundOrConfirmedIsACaseAndItsStateAgreesWithTheOutcome() {
        byEveryRuleSet(15, (history, options) -> {
            WorkerJudgement judgement = Judge.judge(history, options);
            if (twoJudgedOnOneDay(judgement)) {
                return;
            }
            WorkerCases cases = WorkerCases.of(history, judgement, options);
            judgement.determinations().forEach(determination -> {
                if (determination instanceof Judged judged) {
                    List<CaseState> states = cases.cases().stream()
                            .filter(life -> life.testDate().equals(judged.test().date()))
                            .flatMap(life -> life.state(judged.ear()).stream())
                            .toList();
                    if (judged.outcome() == Outcome.CONFIRMED) {
                        assertThat(states).extracting(CaseState::shift).containsExactly(CaseState.Shift.CONFIRMED);
                    } else if (judged.outcome() == Outcome.AWAITING_RETEST) {
                        assertThat(states)
                                .singleElement()
                                .extracting(CaseState::shift)
                                .isIn(CaseState.Shift.FOUND, CaseState.Shift.RETEST_BOOKED);
                    } else if (judged.outcome() == Outcome.NOT_CONFIRMED) {
                        assertThat(states).hasSize(1);
                    }
                }
            });
        });
    }

    @Test
    void theNewKindsOfDecisionChangeNoDetermination() {
        Set<DecisionKind> acts = Set.of(
                DecisionKind.RETEST_BOOKED,
                DecisionKind.PROTECTOR_REFITTED,
                DecisionKind.TRAINED,
                DecisionKind.REFERRED);
        AtomicInteger left = new AtomicInteger();
        byEveryRuleSet(16, (history, options) -> {
            List<Decision> others = history.decisions().stream()
                    .filter(decision -> !acts.contains(decision.kind()))
                    .toList();
            left.addAndGet(history.decisions().size() - others.size());
            assertThat(Judge.judge(new WorkerHistory(history.worker(), history.audiograms(), others), options))
                    .isEqualTo(Judge.judge(history, options));
        });
        assertThat(left).hasValueGreaterThan(500);
    }

    @Test
    void anOpenMoveEnteredTodayIsNeverObjectedToAndAClosedOneAlwaysIs() {
        AtomicInteger open = new AtomicInteger();
        byEveryRuleSet(17, (history, options) -> {
            if (options.baselineRevision() == BaselineRevision.PROPOSE) {
                return;
            }
            for (CaseLife life : cases(history, options).cases()) {
                for (NextMove next : life.nextMoves()) {
                    Decision decision = new Decision(
                            next.ears(),
                            life.testDate(),
                            next.move().decision().orElseThrow(),
                            options.asOf(),
                            "N. Invented",
                            "entered now");
                    boolean isOpen = next instanceof NextMove.Open;
                    if (livedOn(life, options.asOf())) {
                        continue;
                    }
                    assertThat(WorkerCases.objectionTo(decision, history, options)
                                    .isEmpty())
                            .as("%s %s", next, life.history())
                            .isEqualTo(isOpen);
                    open.addAndGet(isOpen ? 1 : 0);
                }
            }
        });
        assertThat(open).hasValueGreaterThan(1000);
    }

    /** What was done on this very day is ordered by kind, not by entry: such a day is left out here. */
    private static boolean livedOn(CaseLife life, LocalDate today) {
        return life.history().stream().anyMatch(event -> event.day().equals(today));
    }
}
