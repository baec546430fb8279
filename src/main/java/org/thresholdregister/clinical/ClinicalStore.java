package org.thresholdregister.clinical;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.HealthHistory;

/**
 * The clinical part of the record, for the services of other features. It checks no role: the service that calls it does,
 * and may hand it to a nurse or, in a letter, to the professional it is addressed to; screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class ClinicalStore {

    /** Something with the day that it is of. */
    public record Dated<T>(LocalDate day, T what) {}

    /**
     * The latest of each part, which may be of different days.
     *
     * @param said what the worker said last
     */
    public record Latest(
            Optional<Dated<HealthHistory>> history,
            Optional<Dated<PerEar<EarLook>>> ears,
            Optional<Dated<String>> said) {}

    private final EntityManager entityManager;
    private final Clock clock;

    ClinicalStore(EntityManager entityManager, Clock clock) {
        this.entityManager = entityManager;
        this.clock = clock;
    }

    /** The latest history, ear examination and words of the worker with this key that are in force. */
    public Latest latest(long workerKey) {
        List<ClinicalEntry> inForce =
                entries(workerKey).stream().filter(ClinicalEntry::inForce).toList();
        return new Latest(
                inForce.stream()
                        .filter(entry -> !entry.facts().history().isEmpty())
                        .findFirst()
                        .map(entry -> new Dated<>(entry.day(), entry.facts().history())),
                inForce.stream()
                        .filter(entry -> !entry.facts().ears().left().isEmpty()
                                || !entry.facts().ears().right().isEmpty())
                        .findFirst()
                        .map(entry -> new Dated<>(entry.day(), entry.facts().ears())),
                inForce.stream()
                        .filter(entry -> !entry.facts().said().isEmpty())
                        .findFirst()
                        .map(entry -> new Dated<>(entry.day(), entry.facts().said())));
    }

    /** Every entry, the newest day first. */
    List<ClinicalEntry> entries(long workerKey) {
        List<StoredClinicalEntry> rows = rows(workerKey);
        Set<Long> replaced =
                rows.stream().flatMap(row -> row.corrects().stream()).collect(Collectors.toSet());
        return rows.stream()
                .sorted(Comparator.comparing(StoredClinicalEntry::day)
                        .thenComparing(StoredClinicalEntry::key)
                        .reversed())
                .map(row -> row.toEntry(!replaced.contains(row.key())))
                .toList();
    }

    /** The entry of a day that is in force. */
    Optional<StoredClinicalEntry> on(long workerKey, LocalDate day) {
        return rows(workerKey).stream()
                .filter(row -> row.day().equals(day))
                .max(Comparator.comparing(StoredClinicalEntry::key));
    }

    private List<StoredClinicalEntry> rows(long workerKey) {
        return entityManager
                .createQuery(
                        "select e from StoredClinicalEntry e where e.workerId = :key order by e.id",
                        StoredClinicalEntry.class)
                .setParameter("key", workerKey)
                .getResultList();
    }

    /** Keeps facts as of a day, in the place of those of the same day that are in force. */
    void keep(long workerKey, LocalDate day, ClinicalFacts facts, String reason, String by) {
        entityManager.persist(new StoredClinicalEntry(
                workerKey, day, facts, on(workerKey, day).orElse(null), reason, by, clock.instant()));
    }
}
