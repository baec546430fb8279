package org.thresholdregister.testing.ui;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.shift.ThresholdShift;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.testing.TypedThresholds;
import org.thresholdregister.testing.ui.ThresholdEntry.Before;

/** The numbers of the last test and of the baseline that stand beside the fields. */
final class Comparison {

    private Comparison() {}

    /** @param former the test that is to be superseded, if any */
    static List<Before> of(WorkerRecord record, Optional<RecordedTest> former) {
        Optional<Audiogram> last = last(record, former);
        Map<Ear, Audiogram> baselines = new EnumMap<>(Ear.class);
        for (Determination determination : record.judgement().determinations()) {
            Optional<Audiogram> baseline = determination instanceof Determination.BaselineTest
                    ? Optional.of(determination.test())
                    : determination.shift().map(ThresholdShift::earlier);
            baseline.ifPresent(test -> baselines.put(determination.ear(), test));
        }
        List<Before> before = new ArrayList<>();
        for (Ear ear : TypedThresholds.EARS) {
            Optional<Audiogram> baseline = Optional.ofNullable(baselines.get(ear));
            Optional<Audiogram> other =
                    last.filter(test -> baseline.filter(test::equals).isEmpty());
            for (Frequency frequency : Frequency.values()) {
                before.add(new Before(cell(other, ear, frequency), cell(baseline, ear, frequency)));
            }
            before.add(new Before("", ""));
        }
        return before;
    }

    /** The latest test on record, of those before the one to be superseded where there is one. */
    static Optional<Audiogram> last(WorkerRecord record, Optional<RecordedTest> former) {
        return record.tests().stream()
                .map(RecordedTest::audiogram)
                .filter(test -> former.map(RecordedTest::audiogram)
                        .filter(old -> Audiogram.CHRONOLOGICAL.compare(test, old) >= 0)
                        .isEmpty())
                .max(Audiogram.CHRONOLOGICAL);
    }

    private static String cell(Optional<Audiogram> test, Ear ear, Frequency frequency) {
        return test.map(audiogram -> audiogram.threshold(ear, frequency))
                .filter(threshold -> !(threshold instanceof Threshold.NotTested))
                .map(Words::thresholdCell)
                .orElse("");
    }
}
