package org.thresholdregister.review;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.shift.ThresholdShift;
import org.thresholdregister.core.validity.ValidityFlag;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;

/**
 * A test on record with what became of it, ear by ear.
 *
 * @param determinations by ear; an ear on which the test is not judged is absent
 * @param notJudged why, in words, for each ear that is absent there
 * @param flags what there is to doubt about the test
 */
public record TestStory(
        RecordedTest test,
        Map<Ear, Determination> determinations,
        Map<Ear, String> notJudged,
        List<ValidityFlag> flags) {

    public TestStory {
        determinations = Map.copyOf(determinations);
        notJudged = Map.copyOf(notJudged);
    }

    /** The stories of all tests of a record, in order of time. */
    static List<TestStory> allOf(WorkerRecord record) {
        return record.tests().stream()
                .sorted(Comparator.comparing(RecordedTest::audiogram, Audiogram.CHRONOLOGICAL))
                .map(test -> of(test, record))
                .toList();
    }

    private static TestStory of(RecordedTest test, WorkerRecord record) {
        Map<Ear, Determination> determinations = new EnumMap<>(Ear.class);
        for (Determination determination : record.judgement().determinations()) {
            if (determination.test().equals(test.audiogram())) {
                determinations.put(determination.ear(), determination);
            }
        }
        Map<Ear, String> notJudged = new EnumMap<>(Ear.class);
        for (Ear ear : Ear.values()) {
            if (!determinations.containsKey(ear)) {
                notJudged.put(ear, whyNotJudged(test.audiogram(), ear, record));
            }
        }
        List<ValidityFlag> flags = record.validity().stream()
                .filter(of -> of.test().equals(test.audiogram()))
                .flatMap(of -> of.flags().stream())
                .toList();
        return new TestStory(test, determinations, notJudged, flags);
    }

    private static String whyNotJudged(Audiogram test, Ear ear, WorkerRecord record) {
        if (!test.purpose().isJudged()) {
            return "not judged, as a test of this purpose never is";
        }
        return record.decisions().stream()
                .map(RecordedDecision::decision)
                .filter(decision -> decision.kind() == DecisionKind.INVALID_TEST
                        && decision.testDate().equals(test.date())
                        && decision.ears().include(ear))
                .reduce((earlier, later) -> later)
                .map(decision -> "not judged, " + Words.decision(decision.kind()) + " on "
                        + Words.day(decision.decidedOn())
                        + (decision.reason().isBlank() ? "" : ": " + decision.reason()))
                .orElse("not judged yet, as its day has not come");
    }

    public Audiogram audiogram() {
        return test.audiogram();
    }

    /** The test beside what each ear is compared with, to be drawn. */
    public AudiogramComparison comparison() {
        AudiogramComparison comparison = AudiogramComparison.of(audiogram());
        for (Determination determination : determinations.values()) {
            Optional<Audiogram> baseline = determination instanceof Determination.BaselineTest
                    ? Optional.of(audiogram())
                    : determination.shift().map(ThresholdShift::earlier);
            if (baseline.isPresent()) {
                comparison = comparison.withBaseline(determination.ear(), baseline.get());
            }
        }
        return comparison;
    }

    public Optional<Determination> of(Ear ear) {
        return Optional.ofNullable(determinations.get(ear));
    }

    /** {@code Annual test of 3 Nov 2026}. */
    public String name() {
        return Words.capitalised(Words.purpose(audiogram().purpose())) + " of "
                + Words.day(audiogram().date());
    }

    /** What was found for an ear, or why nothing was: {@code shift confirmed, recordable}. */
    public String finding(Ear ear) {
        return of(ear).map(FindingWords::finding).orElseGet(() -> notJudged.getOrDefault(ear, "not judged"));
    }
}
