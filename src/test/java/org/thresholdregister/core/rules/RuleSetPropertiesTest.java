package org.thresholdregister.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.regulation.Answer;

/** What has to hold of every rule set, over seeded random populations. */
@DisplayName("Every rule set")
class RuleSetPropertiesTest {

    private static final int HISTORIES = 1_500;

    /** A question about one test, and its answer: "yes", "no", "undecided" or a category. */
    private record Question(Audiogram test, Ears ears, String rule) {}

    static Stream<RuleSet> ruleSets() {
        return RuleSets.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void answersTheSameInWhateverOrderTheHistoryIsListed(RuleSet ruleSet) {
        Random random = new Random(1);
        check(11, ruleSet, true, (history, options) -> {
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            Collections.shuffle(audiograms, random);
            assertThat(Judge.judge(new WorkerHistory(history.worker(), audiograms, history.decisions()), options))
                    .isEqualTo(Judge.judge(history, options));
        });
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void swapsItsAnswersWithTheEars(RuleSet ruleSet) {
        check(12, ruleSet, false, (history, options) -> {
            Map<String, String> expected = new HashMap<>();
            answers(Judge.judge(history, options))
                    .forEach((question, answer) -> expected.put(key(question, swapped(question.ears)), answer));
            Map<String, String> found = new HashMap<>();
            answers(Judge.judge(with(history, RuleSetPropertiesTest::swapped), options))
                    .forEach((question, answer) -> found.put(key(question, question.ears), answer));
            assertThat(found).isEqualTo(expected);
        });
    }

    /** Rules about levels are left out: they are meant to change. */
    @ParameterizedTest
    @MethodSource("ruleSets")
    void findsTheSameShiftsWhereEveryThresholdIsTenHigher(RuleSet ruleSet) {
        check(13, ruleSet, false, (history, options) -> {
            List<String> before = shiftAnswers(Judge.judge(history, options));
            List<String> after = shiftAnswers(Judge.judge(with(history, RuleSetPropertiesTest::tenHigher), options));
            assertThat(after).isEqualTo(before);
        });
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void neverTurnsAnAnswerRoundWhereANumberIsTakenAwayOrFilledIn(RuleSet ruleSet) {
        Random random = new Random(4);
        int[] opened = {0};
        check(14, ruleSet, false, (history, options) -> {
            int at = random.nextInt(history.audiograms().size());
            Ear ear = random.nextBoolean() ? Ear.LEFT : Ear.RIGHT;
            Frequency frequency = Frequency.values()[random.nextInt(Frequency.values().length)];
            Audiogram known = history.audiograms().get(at);
            if (!(known.threshold(ear, frequency) instanceof Threshold.Measured)) {
                return;
            }
            Audiogram lessKnown = known.with(ear, frequency, lessKnown(random, known.threshold(ear, frequency)));
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            audiograms.set(at, lessKnown);
            Map<String, String> before = new HashMap<>();
            answers(Judge.judge(history, options))
                    .forEach((question, answer) -> before.put(key(question, question.ears), answer));
            answers(Judge.judge(new WorkerHistory(history.worker(), audiograms, List.of()), options))
                    .forEach((question, answer) -> {
                        String key = key(question, question.ears);
                        assertThat(answer).as(key).isIn(before.get(key), "undecided");
                        opened[0] += answer.equals(before.get(key)) ? 0 : 1;
                    });
        });
        assertThat(opened[0]).as("answers that became undecided").isGreaterThan(20);
    }

    /** No response at five under the number leaves the number possible. */
    private static Threshold lessKnown(Random random, Threshold threshold) {
        int level = ((Threshold.Measured) threshold).level().decibels();
        return switch (random.nextInt(3)) {
            case 0 -> Threshold.noResponse();
            case 1 ->
                level - 5 < HearingLevel.LOWEST_DB
                        ? Threshold.notGiven()
                        : Threshold.noResponseAt(level - Threshold.STEP_DB);
            default -> Threshold.notGiven();
        };
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void determinesTheSameWhetherRevisionIsOffOrOnlyProposed(RuleSet ruleSet) {
        check(15, ruleSet, true, (history, options) -> {
            WorkerJudgement off = Judge.judge(history, options);
            WorkerJudgement proposed = Judge.judge(history, options.withBaselineRevision(BaselineRevision.PROPOSE));
            assertThat(proposed.determinations()).isEqualTo(off.determinations());
            assertThat(proposed.findings()).isEqualTo(off.findings());
            assertThat(proposed.followUps()).isEqualTo(off.followUps());
            assertThat(off.proposals()).isEmpty();
        });
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void asksItsFurtherRulesOfEveryJudgedTest(RuleSet ruleSet) {
        check(16, ruleSet, false, (history, options) -> {
            List<Finding> findings = Judge.judge(history, options).findings();
            long judged = history.audiograms().stream()
                    .filter(test -> test.purpose() != TestPurpose.OTHER)
                    .count();
            long always = ruleSet.furtherRules().stream()
                    .filter(rule -> rule.criterion() instanceof Criterion.SumByAgeAndSex)
                    .count();
            assertThat(findings.stream()
                            .filter(finding -> finding.rule().criterion() instanceof Criterion.SumByAgeAndSex))
                    .hasSize((int) (2 * judged * always));
        });
    }

    private static void check(
            long seed,
            RuleSet ruleSet,
            boolean withDecisions,
            java.util.function.BiConsumer<WorkerHistory, JudgingOptions> check) {
        RandomHistories.check(
                seed,
                HISTORIES,
                withDecisions,
                (history, options) -> check.accept(
                        history,
                        new JudgingOptions(options.asOf(), ruleSet, options.ageCorrection(), BaselineRevision.OFF)));
    }

    private static Map<Question, String> answers(WorkerJudgement judgement) {
        Map<Question, String> answers = new HashMap<>();
        judgement
                .determinations()
                .forEach(determination -> determination
                        .shift()
                        .ifPresent(shift -> answers.put(
                                new Question(determination.test(), Ears.of(determination.ear()), "shift"),
                                word(shift.isShift()))));
        judgement
                .findings()
                .forEach(finding -> answers.put(
                        new Question(
                                finding.test(), finding.ears(), finding.rule().word()),
                        finding.verdict().word()));
        return answers;
    }

    private static List<String> shiftAnswers(WorkerJudgement judgement) {
        List<String> answers = new ArrayList<>();
        judgement
                .determinations()
                .forEach(determination -> determination
                        .shift()
                        .ifPresent(shift -> answers.add(
                                determination.test() + " " + determination.ear() + " " + word(shift.isShift()))));
        judgement.findings().stream()
                .filter(finding -> switch (finding.rule().criterion()) {
                    case Criterion.FromBaseline ignored -> true;
                    case Criterion.Persistent ignored -> true;
                    case Criterion.SumSinceRecentTest ignored -> true;
                    default -> false;
                })
                .forEach(finding -> answers.add(finding.test() + " " + finding.ears() + " "
                        + finding.rule().word() + " " + finding.verdict().word()));
        return answers;
    }

    private static String word(Answer answer) {
        return new Verdict.Answered(answer).word();
    }

    private static String key(Question question, Ears ears) {
        return question.test + " " + ears + " " + question.rule;
    }

    private static Ears swapped(Ears ears) {
        return switch (ears) {
            case LEFT -> Ears.RIGHT;
            case RIGHT -> Ears.LEFT;
            case BOTH -> Ears.BOTH;
        };
    }

    private static WorkerHistory with(WorkerHistory history, java.util.function.UnaryOperator<Audiogram> change) {
        return new WorkerHistory(
                history.worker(), history.audiograms().stream().map(change).toList(), history.decisions());
    }

    private static Audiogram swapped(Audiogram audiogram) {
        Audiogram.Builder builder = new Audiogram.Builder(audiogram.date(), audiogram.purpose());
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear.other(), frequency, audiogram.threshold(ear, frequency));
            }
        }
        return builder.build();
    }

    private static Audiogram tenHigher(Audiogram audiogram) {
        Audiogram.Builder builder = new Audiogram.Builder(audiogram.date(), audiogram.purpose());
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(
                        ear,
                        frequency,
                        switch (audiogram.threshold(ear, frequency)) {
                            case Threshold.Measured measured ->
                                Threshold.measured(measured.level().decibels() + 10);
                            case Threshold.NoResponse none ->
                                none.limit()
                                        .map(limit -> Threshold.noResponseAt(limit.decibels() + 10))
                                        .orElse(none);
                            case Threshold.NotTested untested -> untested;
                        });
            }
        }
        return builder.build();
    }
}
