package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.calibration.Equipment;
import org.thresholdregister.core.calibration.TestSetting;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.validity.SameDayTests;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.validity.TestValidity;
import org.thresholdregister.instruments.EquipmentStore;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/**
 * Finds what there is to doubt about tests on record. Others' tests are read only for a test that looks like none of the
 * worker's own, and only those of the worker's site, which whoever may see the worker may see too.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ValidityFinder {

    private final WorkerStore workers;
    private final TestStore tests;
    private final HistoryStore histories;
    private final EquipmentStore equipment;

    ValidityFinder(WorkerStore workers, TestStore tests, HistoryStore histories, EquipmentStore equipment) {
        this.workers = workers;
        this.tests = tests;
        this.histories = histories;
        this.equipment = equipment;
    }

    /** The doubts about this worker's tests, found when they are asked for, within the transaction. */
    TestValidity of(StoredHistory stored, WorkerJudgement judgement, QuietRule quiet) {
        Map<Audiogram, RecordedTest> recorded =
                stored.tests().stream().collect(Collectors.toMap(RecordedTest::audiogram, Function.identity()));
        Equipment ofSite = equipment.at(stored.worker().details().site());
        return new TestValidity(
                stored.history(),
                judgement,
                test -> conditions(recorded, ofSite, test),
                quiet,
                SameDayTests.in(day -> othersTestedOn(day, stored.worker())));
    }

    private static TestConditions conditions(Map<Audiogram, RecordedTest> recorded, Equipment ofSite, Audiogram test) {
        RecordedTest found = recorded.get(test);
        if (found == null) {
            return TestConditions.NOT_ON_RECORD;
        }
        TestFacts facts = found.facts();
        return facts.conditions()
                .withEquipment(ofSite.doubts(new TestSetting(
                        test.date(), facts.instrument(), facts.transducer(), facts.room(), facts.tester())));
    }

    private List<WorkerHistory> othersTestedOn(LocalDate day, StoredWorker worker) {
        List<StoredWorker> others = workers.withKeys(tests.workersTestedOn(day)).stream()
                .filter(other -> other.key() != worker.key()
                        && other.details().site().equals(worker.details().site()))
                .sorted(Comparator.comparing(other -> other.details().workerId()))
                .toList();
        return histories.of(others).stream().map(StoredHistory::history).toList();
    }
}
