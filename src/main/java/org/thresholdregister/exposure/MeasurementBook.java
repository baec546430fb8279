package org.thresholdregister.exposure;

import jakarta.persistence.EntityManager;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/** The measurements on record, those that were withdrawn among them. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class MeasurementBook {

    private final EntityManager entityManager;

    MeasurementBook(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** In order of time. */
    List<NoiseMeasurement> all(SiteScope scope) {
        return with(ListQuery.of(entityManager, "StoredNoiseMeasurement m", "m.site", scope)
                .all("m", "", tuple -> tuple.get(0, StoredNoiseMeasurement.class)));
    }

    /** In order of time. */
    List<NoiseMeasurement> ofSubject(NoiseSubject subject, SiteScope scope) {
        return with(ListQuery.of(entityManager, "StoredNoiseMeasurement m", "m.site", scope)
                .where("m.site = ?", subject.site())
                .where("m.subjectKind = ?", subject.kind())
                .where("m.subjectName = ?", subject.name())
                .all("m", "", tuple -> tuple.get(0, StoredNoiseMeasurement.class)));
    }

    /** The measurement with this key, where its site is in the scope. */
    Optional<NoiseMeasurement> find(long key, SiteScope scope) {
        return with(ListQuery.of(entityManager, "StoredNoiseMeasurement m", "m.site", scope)
                        .where("m.id = ?", key)
                        .all("m", "", tuple -> tuple.get(0, StoredNoiseMeasurement.class)))
                .stream()
                .findFirst();
    }

    private List<NoiseMeasurement> with(List<StoredNoiseMeasurement> stored) {
        Map<Long, NoiseMeasurement.Withdrawal> withdrawn = new HashMap<>();
        entityManager
                .createQuery("select w from StoredWithdrawal w", StoredWithdrawal.class)
                .getResultStream()
                .forEach(withdrawal -> withdrawn.put(withdrawal.measurementId(), withdrawal.toWithdrawal()));
        return stored.stream()
                .map(measurement -> measurement.toMeasurement(Optional.ofNullable(withdrawn.get(measurement.key()))))
                .sorted(MeasuredNoise.IN_ORDER)
                .toList();
    }
}
