package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "headset_unit")
@Immutable
class StoredHeadsetUnit extends StoredEntry<Facts.CalibratedTo> {

    private long headsetId;
    private long audiometerId;
    private LocalDate usedFrom;
    private @Nullable LocalDate usedTo;

    @SuppressWarnings("NullAway.Init")
    protected StoredHeadsetUnit() {}

    StoredHeadsetUnit(Facts.CalibratedTo facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        headsetId = facts.headset();
        audiometerId = facts.unit();
        usedFrom = facts.from();
        usedTo = facts.to().orElse(null);
    }

    @Override
    Facts.CalibratedTo facts() {
        return new Facts.CalibratedTo(headsetId, audiometerId, usedFrom, Optional.ofNullable(usedTo));
    }
}
