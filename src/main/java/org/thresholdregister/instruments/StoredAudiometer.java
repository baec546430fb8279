package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.calibration.Audiometer.Type;

@Entity
@Table(name = "audiometer")
@Immutable
class StoredAudiometer extends StoredEntry<Facts.Unit> {

    private String site;
    private String identity;
    private String serialNumber;

    @Enumerated(EnumType.STRING)
    private Type unitType;

    private String outputLimits;
    private LocalDate usedFrom;
    private @Nullable LocalDate usedTo;

    @SuppressWarnings("NullAway.Init")
    protected StoredAudiometer() {}

    StoredAudiometer(Facts.Unit facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        site = facts.site();
        identity = facts.identity();
        serialNumber = facts.serialNumber();
        unitType = facts.type();
        outputLimits = facts.limits().text();
        usedFrom = facts.from();
        usedTo = facts.to().orElse(null);
    }

    @Override
    Facts.Unit facts() {
        return new Facts.Unit(
                site,
                identity,
                serialNumber,
                unitType,
                OutputLimits.parse(outputLimits),
                usedFrom,
                Optional.ofNullable(usedTo));
    }
}
