package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "room_measurement")
@Immutable
class StoredMeasurement extends StoredEntry<Facts.Measurement> {

    private long roomId;
    private LocalDate measuredOn;
    private String measuredBy;
    private String meter;
    private String levels;
    private @Nullable Long documentId;

    @SuppressWarnings("NullAway.Init")
    protected StoredMeasurement() {}

    StoredMeasurement(
            Facts.Measurement facts, Change change, String enteredBy, Instant enteredAt, @Nullable Long documentId) {
        super(change, enteredBy, enteredAt);
        roomId = facts.room();
        measuredOn = facts.day();
        measuredBy = facts.by();
        meter = facts.meter();
        levels = Notation.ofLevels(facts.levels());
        this.documentId = documentId;
    }

    @Override
    Facts.Measurement facts() {
        return new Facts.Measurement(roomId, measuredOn, measuredBy, meter, Notation.levels(levels));
    }

    @Override
    Optional<Long> documentKey() {
        return Optional.ofNullable(documentId);
    }
}
