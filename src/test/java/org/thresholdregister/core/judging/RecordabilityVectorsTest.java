package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * The 81 recordability vectors, each derived by hand from 29 CFR 1904.10 and 1910.95 (see
 * {@code vectors/README.md}; the paragraph stands in each row).
 */
@DisplayName("Recordability vectors (29 CFR 1904.10, 1910.95)")
class RecordabilityVectorsTest {

    private static final Pattern TEST = Pattern.compile(
            "(\\d{4}-\\d\\d-\\d\\d) (\\w+|\\(day \\d+\\)): L (\\S+ \\S+ \\S+) / R (\\S+ \\S+ [^\\s;]+)");
    private static final Pattern LATER_ROW =
            Pattern.compile("(\\S+) (left|right): sts (\\w+), ([a-z-]+), recordable ([a-z-]+)");

    /**
     * What was decided in rows H01 to H05, in the terms of the decisions file. H02, recorded and then found not
     * work-related, is the line-out that follows: the finding by itself makes a case none, whenever it comes.
     */
    private static final Map<String, List<Decision>> DECISIONS = Map.of(
            "H01", List.of(decision("2026-04-01", DecisionKind.NOT_WORK_RELATED, "2026-04-10")),
            "H02",
                    List.of(
                            decision("2026-04-01", DecisionKind.RECORDED, "2026-04-30"),
                            decision("2026-04-01", DecisionKind.LINED_OUT, "2026-06-20")),
            "H03", List.of(decision("2026-04-01", DecisionKind.WORK_RELATED, "2026-04-10")),
            "H04", List.of(decision("2024-04-01", DecisionKind.NOT_WORK_RELATED, "2024-04-20")),
            "H05",
                    List.of(
                            decision("2024-04-01", DecisionKind.RECORDED, "2024-04-20"),
                            decision("2024-04-01", DecisionKind.LINED_OUT, "2025-04-20")));

    static Stream<Map<String, String>> vectors() {
        return Vectors.rows("recordability-vectors.csv").stream();
    }

    @Test
    void noVectorIsMissing() {
        assertThat(vectors().count()).isEqualTo(81);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vectors")
    void judgedAsDerivedByHand(Map<String, String> row) {
        LocalDate testDate = LocalDate.parse(row.get("test_date"));
        List<Determination> determinations =
                Judge.judge(history(row), options(row)).determinations();
        SoftAssertions softly = new SoftAssertions();
        for (Ear ear : Ear.values()) {
            Judged judged = judged(determinations, testDate, ear, row.get("test_purpose"));
            String at = row.get("id") + " " + ear.word() + " ";
            String column = ear.word() + "_";
            ThresholdShift shift = judged.comparison();
            softly.assertThat(mean(shift.uncorrectedSum()))
                    .as(at + "raw shift")
                    .isEqualTo(row.get(column + "avg_shift_raw"));
            softly.assertThat(mean(shift.sum())).as(at + "shift").isEqualTo(row.get(column + "avg_shift"));
            softly.assertThat(shift.isShift().name().toLowerCase(Locale.ROOT))
                    .as(at + "sts")
                    .isEqualTo(row.get(column + "sts"));
            softly.assertThat(mean(judged.levelSum())).as(at + "level").isEqualTo(row.get(column + "avg_level"));
            softly.assertThat(judged.outcome().word()).as(at + "outcome").isEqualTo(row.get(column + "outcome"));
            softly.assertThat(judged.recording().answer().word())
                    .as(at + "recordable")
                    .isEqualTo(row.get(column + "recordable"));
            softly.assertThat(judged.settledBy().date().toString())
                    .as(at + "deciding test")
                    .isEqualTo(row.get(column + "deciding_test_date"));
            judged.recording().comparison().ifPresent(comparison -> {
                softly.assertThat(comparison.reference().audiogram().date().toString())
                        .as(at + "reference")
                        .isEqualTo(row.get(column + "reference_date"));
                softly.assertThat(mean(comparison.shift().sum()))
                        .as(at + "shift from the reference")
                        .isEqualTo(row.get(column + "avg_shift_vs_reference_on_deciding_test"));
                softly.assertThat(mean(comparison.levelSum()))
                        .as(at + "deciding level")
                        .isEqualTo(row.get(column + "deciding_avg_level"));
            });
        }
        softly.assertThat(earliestRecordBy(determinations, testDate))
                .as(row.get("id") + " record by")
                .isEqualTo(row.get("record_by"));
        laterRows(row, determinations, softly);
        softly.assertAll();
    }

    private static String earliestRecordBy(List<Determination> determinations, LocalDate from) {
        return determinations.stream()
                .filter(determination -> !determination.test().date().isBefore(from))
                .flatMap(determination ->
                        determination instanceof Judged judged ? judged.dueDates().recordBy().stream() : Stream.of())
                .min(LocalDate::compareTo)
                .map(LocalDate::toString)
                .orElse("");
    }

    private static void laterRows(Map<String, String> row, List<Determination> determinations, SoftAssertions softly) {
        Matcher matcher = LATER_ROW.matcher(row.get("later_rows"));
        assertThat(row.get("later_rows").isEmpty()).isEqualTo(!matcher.find());
        matcher.reset();
        while (matcher.find()) {
            Ear ear = Ear.valueOf(matcher.group(2).toUpperCase(Locale.ROOT));
            Judged judged = judged(determinations, LocalDate.parse(matcher.group(1)), ear, "");
            softly.assertThat(judged.comparison().isShift().name()).isEqualToIgnoringCase(matcher.group(3));
            softly.assertThat(judged.outcome().word()).isEqualTo(matcher.group(4));
            softly.assertThat(judged.recording().answer().word()).isEqualTo(matcher.group(5));
        }
    }

    private static Judged judged(List<Determination> all, LocalDate date, Ear ear, String purpose) {
        return all.stream()
                .filter(Judged.class::isInstance)
                .map(Judged.class::cast)
                .filter(judged -> judged.test().date().equals(date) && judged.ear() == ear)
                .filter(judged -> purpose.isEmpty() || judged.test().purpose() == Vectors.purpose(purpose))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no judged row on " + date + " " + ear));
    }

    private static JudgingOptions options(Map<String, String> row) {
        return new JudgingOptions(
                LocalDate.parse(row.get("as_of")),
                RuleSets.OSHA,
                row.get("age_correction").equals("on") ? AgeCorrection.ON : AgeCorrection.OFF,
                BaselineRevision.OFF);
    }

    private static WorkerHistory history(Map<String, String> row) {
        List<Audiogram> audiograms = new ArrayList<>();
        String baselinePurpose = row.get("id").equals("K03") ? "annual" : "baseline";
        audiograms.add(Vectors.audiogram(
                LocalDate.parse(row.get("baseline_date")),
                Vectors.purpose(baselinePurpose),
                cells(row, "bl_l_"),
                cells(row, "bl_r_")));
        audiograms.add(Vectors.audiogram(
                LocalDate.parse(row.get("test_date")),
                Vectors.purpose(row.get("test_purpose")),
                cells(row, "t_l_"),
                cells(row, "t_r_")));
        addTests(audiograms, row.get("earlier_tests"));
        addTests(audiograms, row.get("retests"));
        WorkerFacts worker = new WorkerFacts(
                row.get("id"),
                Optional.of(row.get("birth_date"))
                        .filter(text -> !text.isEmpty())
                        .map(LocalDate::parse),
                Arrays.stream(Sex.values())
                        .filter(sex -> sex.code().equals(row.get("sex")))
                        .findFirst(),
                Optional.empty(),
                Optional.empty());
        return new WorkerHistory(worker, audiograms, DECISIONS.getOrDefault(row.get("id"), List.of()));
    }

    private static void addTests(List<Audiogram> audiograms, String notation) {
        Matcher matcher = TEST.matcher(notation);
        int found = 0;
        while (matcher.find()) {
            String purpose = matcher.group(2).startsWith("(") ? "retest" : matcher.group(2);
            audiograms.add(Vectors.audiogram(
                    LocalDate.parse(matcher.group(1)),
                    Vectors.purpose(purpose),
                    List.of(matcher.group(3).split(" ")),
                    List.of(matcher.group(4).split(" "))));
            found++;
        }
        assertThat(found).isEqualTo(notation.isEmpty() ? 0 : notation.split(";").length);
    }

    private static List<String> cells(Map<String, String> row, String prefix) {
        return Stream.of("2000", "3000", "4000")
                .map(hertz -> row.get(prefix + hertz))
                .toList();
    }

    private static Decision decision(String testDate, DecisionKind kind, String on) {
        return new Decision(
                Ears.LEFT, LocalDate.parse(testDate), kind, LocalDate.parse(on), "Dr Invented", "as the vector says");
    }

    private static String mean(DecibelRange sum) {
        return sum.exact().isPresent() ? MeanOfThree.ofSum(sum.exact().getAsInt()) : "";
    }
}
