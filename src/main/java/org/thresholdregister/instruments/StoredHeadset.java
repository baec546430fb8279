package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.thresholdregister.core.calibration.Headset;

@Entity
@Table(name = "headset")
@Immutable
class StoredHeadset extends StoredEntry<Facts.Earphones> {

    private String site;
    private String identity;

    @Enumerated(EnumType.STRING)
    private Headset.Type headsetType;

    private String earphone;

    @SuppressWarnings("NullAway.Init")
    protected StoredHeadset() {}

    StoredHeadset(Facts.Earphones facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        site = facts.site();
        identity = facts.identity();
        headsetType = facts.type();
        earphone = facts.earphone();
    }

    @Override
    Facts.Earphones facts() {
        return new Facts.Earphones(site, identity, headsetType, earphone);
    }
}
