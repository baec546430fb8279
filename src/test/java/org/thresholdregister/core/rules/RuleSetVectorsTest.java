package org.thresholdregister.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.ShiftCriterion;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * Each rule set against vectors that were derived from its text, by hand and before the code, each row naming its
 * paragraph; see {@code vectors/README.md}.
 */
@DisplayName("Rule sets against vectors from their texts")
class RuleSetVectorsTest {

    private static final LocalDate AS_OF = LocalDate.parse("2026-06-30");

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "osha, osha, 21",
        "msha, msha, 130",
        "fra, fra, 54",
        "niosh, niosh, 100",
        "dod, dod, 64",
        "uk-l108, uk-l108, 192",
        "alberta, alberta, 59",
        "aao, aao, 39",
        "early-warning, twice, 66"
    })
    void everyRowIsAnsweredAsItsTextSays(String files, String ruleSet, int rows) {
        JudgingOptions options =
                new JudgingOptions(AS_OF, RuleSets.find(ruleSet).orElseThrow(), AgeCorrection.ON, BaselineRevision.OFF);
        Map<String, WorkerJudgement> judgements = new HashMap<>();
        histories(files).forEach((worker, history) -> judgements.put(worker, Judge.judge(history, options)));
        List<Map<String, String>> expected = Vectors.rows("rule-sets/" + files + "-expected.csv");
        assertThat(expected).hasSize(rows);
        SoftAssertions softly = new SoftAssertions();
        for (Map<String, String> row : expected) {
            softly.assertThat(found(row, judgements.get(row.get("worker_id"))))
                    .as(row.toString())
                    .isEqualTo(asked(row));
        }
        softly.assertAll();
    }

    private static final List<String> ANSWERED =
            List.of("answer", "amount", "outcome", "recordable", "retest_by", "notify_by");

    /** The cells of a row that are not blank; the amount as a number. */
    private static Map<String, String> asked(Map<String, String> row) {
        Map<String, String> asked = new HashMap<>();
        for (String column : ANSWERED) {
            String cell = row.get(column);
            if (!cell.isEmpty()) {
                asked.put(column, column.equals("amount") ? number(cell) : cell);
            }
        }
        return asked;
    }

    private static Map<String, String> found(Map<String, String> row, WorkerJudgement judgement) {
        Map<String, String> all = switch (row.get("rule")) {
            case "osha_sts", "msha_sts", "fra_sts", "niosh_sts", "dod_sts" ->
                ofDetermination(determination(row, judgement));
            case "msha_reportable", "fra_recordable" -> ofReport(determination(row, judgement));
            default -> ofFinding(row, judgement);
        };
        Map<String, String> found = new HashMap<>();
        asked(row).keySet().forEach(column -> found.put(column, all.getOrDefault(column, "")));
        return found;
    }

    private static Map<String, String> ofDetermination(Determination determination) {
        Map<String, String> cells = new HashMap<>();
        cells.put("outcome", determination.outcome().word());
        determination.shift().ifPresent(shift -> {
            cells.put("answer", word(shift.isShift()));
            cells.put("amount", amount(shift));
        });
        addRecording(determination, cells);
        return cells;
    }

    private static void addRecording(Determination determination, Map<String, String> cells) {
        if (determination instanceof Judged judged) {
            cells.put("recordable", judged.recording().answer().word());
            cells.put("retest_by", day(judged.dueDates().retestBy()));
            cells.put("notify_by", day(judged.dueDates().notifyBy()));
        }
    }

    /** The mean change after the allowance, or the largest where the criterion looks at single frequencies. */
    private static String amount(ThresholdShift shift) {
        if (shift.criterion() instanceof ShiftCriterion.AnyFrequency any) {
            return any.frequencies().stream()
                    .map(frequency -> shift.at(frequency).corrected())
                    .reduce(DecibelRange::max)
                    .map(largest -> number(largest.exact()))
                    .orElse("");
        }
        return mean(shift.sum());
    }

    /** What the row's own test is, before any retest: the vectors ask that of these two rules. */
    private static Map<String, String> ofReport(Determination determination) {
        Map<String, String> cells = new HashMap<>();
        ThresholdShift shift = determination.shift().orElseThrow();
        switch (determination.ruleSet().recording()) {
            case RecordingRule.LargeShift large -> {
                cells.put("answer", word(shift.meets(large.criterion())));
                cells.put("amount", mean(shift.sum()));
            }
            case RecordingRule.ShiftAndLevel both -> {
                DecibelRange levels = determination.levelSum();
                cells.put("answer", word(shift.isShift().and(both.level().reachedByMean(levels, 3))));
                cells.put("amount", mean(levels));
            }
            case RecordingRule.None none -> throw new IllegalStateException(none.toString());
        }
        addRecording(determination, cells);
        return cells;
    }

    private static Map<String, String> ofFinding(Map<String, String> row, WorkerJudgement judgement) {
        Map<String, String> cells = new HashMap<>();
        judgement.findings().stream()
                .filter(finding -> finding.rule().word().equals(row.get("rule"))
                        && finding.ears().word().equals(row.get("ear"))
                        && isOf(row, finding.test()))
                .forEach(finding -> {
                    cells.put("answer", finding.verdict().word());
                    cells.put("amount", amount(finding));
                });
        return cells;
    }

    private static String amount(Finding finding) {
        List<Quantity> quantities = finding.reading().quantities();
        if (quantities.isEmpty()) {
            return "";
        }
        Quantity quantity = quantities.getLast();
        return switch (finding.rule().word()) {
            case "dod_negative", "ten_avg_twice" -> mean(quantity.total());
            case "uk_l108_unilateral" -> {
                OptionalInt difference = quantity.total().exact();
                yield difference.isPresent() ? number("" + Math.abs(difference.getAsInt())) : "";
            }
            default -> number(quantity.total().exact());
        };
    }

    private static Determination determination(Map<String, String> row, WorkerJudgement judgement) {
        return judgement.determinations().stream()
                .filter(determination ->
                        determination.ear().word().equals(row.get("ear")) && isOf(row, determination.test()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing is determined for " + row));
    }

    private static boolean isOf(Map<String, String> row, Audiogram test) {
        return test.date().toString().equals(row.get("test_date"))
                && test.purpose().word().equals(row.get("purpose"));
    }

    private static String word(Answer answer) {
        return new Verdict.Answered(answer).word();
    }

    private static String mean(DecibelRange sum) {
        OptionalInt exact = sum.exact();
        return exact.isPresent() ? number(MeanOfThree.ofSum(exact.getAsInt())) : "";
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? number("" + number.getAsInt()) : "";
    }

    private static String number(String number) {
        return new BigDecimal(number).setScale(2).toPlainString();
    }

    private static String day(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse("");
    }

    private static Map<String, WorkerHistory> histories(String files) {
        Map<String, List<Audiogram>> tests = new HashMap<>();
        for (Map<String, String> row : Vectors.rows("rule-sets/" + files + "-audiograms.csv")) {
            tests.computeIfAbsent(row.get("worker_id"), worker -> new ArrayList<>())
                    .add(audiogram(row));
        }
        Map<String, WorkerHistory> histories = new HashMap<>();
        for (Map<String, String> row : Vectors.rows("rule-sets/" + files + "-roster.csv")) {
            String worker = row.get("worker_id");
            histories.put(
                    worker,
                    new WorkerHistory(
                            new WorkerFacts(
                                    worker,
                                    given(row.get("birth_date")).map(LocalDate::parse),
                                    given(row.get("sex")).map(sex -> sex.equals("M") ? Sex.MALE : Sex.FEMALE),
                                    Optional.empty(),
                                    Optional.empty()),
                            tests.getOrDefault(worker, List.of()),
                            List.of()));
        }
        return histories;
    }

    private static Audiogram audiogram(Map<String, String> row) {
        Audiogram.Builder builder =
                new Audiogram.Builder(LocalDate.parse(row.get("test_date")), Vectors.purpose(row.get("purpose")));
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(
                        ear, frequency, Vectors.threshold(row.getOrDefault(ear.word() + "_" + frequency.hertz(), "")));
            }
        }
        return builder.build();
    }

    private static Optional<String> given(String cell) {
        return Optional.ofNullable(cell).filter(text -> !text.isEmpty());
    }
}
