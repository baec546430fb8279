package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/** Compares a row with the test on record that it seems to be. */
final class TestComparison {

    private TestComparison() {}

    static TestFacts facts(AudiogramRow row) {
        return new TestFacts(
                row.hoursSinceNoise().map(BigDecimal::stripTrailingZeros),
                row.protectorsWorn(),
                row.tester(),
                row.instrument(),
                row.transducer(),
                "",
                row.remark(),
                row.repeatAt1000Hz());
    }

    /** The columns in which the row says something else; none where it says the same. */
    static List<AudiogramColumn> differences(AudiogramRow row, RecordedTest recorded) {
        List<AudiogramColumn> differing = new ArrayList<>();
        Audiogram given = row.audiogram();
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                if (!given.threshold(ear, frequency).equals(recorded.audiogram().threshold(ear, frequency))) {
                    differing.add(AudiogramColumn.of(ear, frequency));
                }
            }
        }
        TestFacts facts = facts(row);
        TestFacts onRecord = recorded.facts();
        addIf(
                !facts.hoursSinceNoise().equals(onRecord.hoursSinceNoise()),
                AudiogramColumn.HOURS_SINCE_NOISE,
                differing);
        addIf(!facts.protectorsWorn().equals(onRecord.protectorsWorn()), AudiogramColumn.PROTECTORS_WORN, differing);
        addIf(!facts.tester().equals(onRecord.tester()), AudiogramColumn.TESTER, differing);
        addIf(!facts.instrument().equals(onRecord.instrument()), AudiogramColumn.INSTRUMENT, differing);
        addIf(!facts.transducer().equals(onRecord.transducer()), AudiogramColumn.TRANSDUCER, differing);
        addIf(!facts.remark().equals(onRecord.remark()), AudiogramColumn.REMARK, differing);
        for (Ear ear : Ear.values()) {
            addIf(
                    !facts.repeatAt1000Hz()
                            .of(ear)
                            .equals(onRecord.repeatAt1000Hz().of(ear)),
                    AudiogramColumn.repeatAt1000Hz(ear),
                    differing);
        }
        return differing;
    }

    private static void addIf(boolean differs, AudiogramColumn column, List<AudiogramColumn> differing) {
        if (differs) {
            differing.add(column);
        }
    }
}
