package org.thresholdregister.audiograms;

import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * The tests on record, for the services of other features. It checks no role: the service that calls it does, and
 * screens never call it. A test that was superseded is not among the tests unless it is asked for as such.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class TestStore {

    private static final Comparator<RecordedTest> CHRONOLOGICAL =
            Comparator.comparing(RecordedTest::audiogram, Audiogram.CHRONOLOGICAL);

    private final AudiogramRepository audiograms;
    private final EntityManager entityManager;

    TestStore(AudiogramRepository audiograms, EntityManager entityManager) {
        this.audiograms = audiograms;
        this.entityManager = entityManager;
    }

    /** The tests of these workers that count, each worker's in order of time. */
    public List<RecordedTest> ofWorkers(Collection<Long> workerKeys) {
        return audiograms.findThoseThatCount(workerKeys).stream()
                .map(StoredAudiogram::toRecordedTest)
                .sorted(CHRONOLOGICAL)
                .toList();
    }

    /** The tests of these workers that count no more, the last superseded first. */
    public List<SupersededTest> supersededOf(Collection<Long> workerKeys) {
        Map<Long, RecordedTest> takenOut = audiograms.findThoseTakenOut(workerKeys).stream()
                .map(StoredAudiogram::toRecordedTest)
                .collect(Collectors.toMap(RecordedTest::key, Function.identity()));
        if (takenOut.isEmpty()) {
            return List.of();
        }
        return entityManager
                .createQuery(
                        "from StoredSupersession s where s.testKey in :keys order by s.supersededAt desc, s.testKey desc",
                        StoredSupersession.class)
                .setParameter("keys", takenOut.keySet())
                .getResultStream()
                .flatMap(row -> Optional.ofNullable(takenOut.get(row.testKey())).map(row::toSupersededTest).stream())
                .toList();
    }

    /** The workers who have a test of that day. */
    public List<Long> workersTestedOn(LocalDate day) {
        return audiograms.findWorkerIdsByTestDate(day);
    }

    /** The last test of that day that this account signed. */
    public Optional<RecordedTest> lastSignedBy(String account, LocalDate testDate) {
        return entityManager
                .createQuery(
                        "from StoredAudiogram a where a.testDate = :day and a.signedBy = :account"
                                + " and a.takenOut = 0 order by a.signedAt desc, a.id desc",
                        StoredAudiogram.class)
                .setParameter("day", testDate)
                .setParameter("account", account)
                .setMaxResults(1)
                .getResultStream()
                .map(StoredAudiogram::toRecordedTest)
                .findFirst();
    }

    /** What tests of workers of this site name in one of their texts, in order, from a day on. */
    public List<String> named(TestText text, String site, LocalDate from) {
        return entityManager
                .createQuery(
                        "select distinct a.%1$s from StoredAudiogram a join Worker w on w.id = a.workerId"
                                        .formatted(text.path())
                                + " where w.site = :site and a.testDate >= :from and a.%1$s <> '' order by a.%1$s"
                                        .formatted(text.path()),
                        String.class)
                .setParameter("site", site)
                .setParameter("from", from)
                .getResultList();
    }

    /** Stores a new test of an import and returns its key. */
    public long add(long workerKey, Audiogram audiogram, TestFacts facts, long importBatch) {
        return audiograms
                .save(new StoredAudiogram(workerKey, audiogram, facts, importBatch))
                .key();
    }

    /** Stores a new test that was signed and returns its key. */
    public long add(long workerKey, Audiogram audiogram, TestFacts facts, RecordedTest.Signature signature) {
        return audiograms
                .save(new StoredAudiogram(workerKey, audiogram, facts, signature))
                .key();
    }

    /**
     * Lets a signed test take the place of one on record, which stays as it is and counts no more.
     *
     * @return the key of the new test
     * @throws IllegalArgumentException where the former test does not count, or is another worker's
     */
    public long replace(
            long former,
            long workerKey,
            Audiogram audiogram,
            TestFacts facts,
            RecordedTest.Signature signature,
            String reason,
            LocalDate on) {
        takeOut(former, workerKey);
        long key = add(workerKey, audiogram, facts, signature);
        explain(former, Optional.of(key), reason, signature.by(), signature.at(), on);
        return key;
    }

    /**
     * Takes a test out that was entered in error; it stays as it is and counts no more.
     *
     * @throws IllegalArgumentException where the test does not count, or is another worker's
     */
    public void withdraw(long key, long workerKey, String reason, String by, Instant at, LocalDate on) {
        takeOut(key, workerKey);
        explain(key, Optional.empty(), reason, by, at, on);
    }

    private void takeOut(long key, long workerKey) {
        boolean isOfWorker = audiograms
                .findById(key)
                .filter(test -> test.toRecordedTest().workerKey() == workerKey)
                .isPresent();
        if (!isOfWorker || audiograms.takeOut(key) != 1) {
            throw new IllegalArgumentException("no such test that counts");
        }
    }

    private void explain(long key, Optional<Long> successor, String reason, String by, Instant at, LocalDate on) {
        entityManager.flush();
        entityManager.persist(new StoredSupersession(key, successor.orElse(null), reason, by, at, on));
    }
}
