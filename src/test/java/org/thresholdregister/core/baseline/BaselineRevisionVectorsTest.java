package org.thresholdregister.core.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.rules.RuleSets;

/** The 21 sequences derived by hand from the two rules of 49 CFR 227 Appendix C (see {@code vectors/README.md}). */
@DisplayName("Baseline revision vectors (49 CFR 227 Appendix C)")
class BaselineRevisionVectorsTest {

    static Stream<Map<String, String>> vectors() {
        return Vectors.rows("baseline-revision-vectors.csv").stream();
    }

    @Test
    void noVectorIsMissing() {
        assertThat(vectors().count()).isEqualTo(21);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vectors")
    void proposedAsDerivedByHand(Map<String, String> row) {
        List<BaselineChange> proposals = Judge.judge(history(row), options(row)).proposals();

        String left = proposals.stream()
                .filter(change -> change.ear() == Ear.LEFT)
                .map(BaselineRevisionVectorsTest::describe)
                .collect(Collectors.joining("; "));
        assertThat(left.isEmpty() ? "none" : left).isEqualTo(row.get("proposals"));
        assertThat(proposals).noneMatch(change -> change.ear() == Ear.RIGHT);
        LocalDate first = LocalDate.parse(row.get("history").substring(0, 10));
        assertThat(proposals.isEmpty() ? first : proposals.getLast().to().date())
                .isEqualTo(row.get("baseline_at_end"));
    }

    private static String describe(BaselineChange change) {
        String reason = change.isForBetterHearing() ? "improvement" : "persistent STS";
        return "on " + change.decidedOn() + ": " + reason + ", new baseline "
                + change.to().date();
    }

    private static JudgingOptions options(Map<String, String> row) {
        return new JudgingOptions(
                LocalDate.parse("2030-01-01"),
                RuleSets.OSHA,
                row.get("age_correction").equals("on") ? AgeCorrection.ON : AgeCorrection.OFF,
                BaselineRevision.PROPOSE);
    }

    private static WorkerHistory history(Map<String, String> row) {
        List<Audiogram> audiograms = new ArrayList<>();
        for (String test : row.get("history").split("; ")) {
            String[] parts = test.split(": ");
            String[] dateAndPurpose = parts[0].split(" ");
            audiograms.add(Vectors.audiogram(
                    LocalDate.parse(dateAndPurpose[0]),
                    Vectors.purpose(dateAndPurpose[1]),
                    List.of(parts[1].split(" ")),
                    List.of("10", "10", "10")));
        }
        return new WorkerHistory(
                new WorkerFacts(
                        row.get("id"),
                        Optional.of(LocalDate.parse(row.get("birth_date"))),
                        Optional.of(Sex.MALE),
                        Optional.empty(),
                        Optional.empty()),
                audiograms,
                List.of());
    }
}
