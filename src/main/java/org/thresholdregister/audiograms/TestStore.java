package org.thresholdregister.audiograms;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * The tests on record, for the services of other features. It checks no role: the service that calls it does, and
 * screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class TestStore {

    private static final Comparator<RecordedTest> CHRONOLOGICAL =
            Comparator.comparing(RecordedTest::audiogram, Audiogram.CHRONOLOGICAL);

    private final AudiogramRepository audiograms;

    TestStore(AudiogramRepository audiograms) {
        this.audiograms = audiograms;
    }

    /** The tests of these workers, each worker's in order of time. */
    public List<RecordedTest> ofWorkers(Collection<Long> workerKeys) {
        return audiograms.findAllByWorkerIdIn(workerKeys).stream()
                .map(StoredAudiogram::toRecordedTest)
                .sorted(CHRONOLOGICAL)
                .toList();
    }

    /** The workers who have a test of that day. */
    public List<Long> workersTestedOn(LocalDate day) {
        return audiograms.findWorkerIdsByTestDate(day);
    }

    /** Stores a new test and returns its key. */
    public long add(long workerKey, Audiogram audiogram, TestFacts facts, long importBatch) {
        return audiograms
                .save(new StoredAudiogram(workerKey, audiogram, facts, importBatch))
                .key();
    }
}
