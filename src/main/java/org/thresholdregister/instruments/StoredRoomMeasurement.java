package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;

@Entity
@Table(name = "room_measurement")
@Immutable
class StoredRoomMeasurement extends StoredEntry<Facts.Measurement> {

    private long roomId;
    private LocalDate measuredOn;
    private String measuredBy;
    private String meter;
    private String levels;

    @SuppressWarnings("NullAway.Init")
    protected StoredRoomMeasurement() {}

    StoredRoomMeasurement(Facts.Measurement facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        roomId = facts.room();
        measuredOn = facts.day();
        measuredBy = facts.by();
        meter = facts.meter();
        levels = Notation.ofLevels(facts.levels());
    }

    @Override
    Facts.Measurement facts() {
        return new Facts.Measurement(roomId, measuredOn, measuredBy, meter, Notation.levels(levels));
    }
}
