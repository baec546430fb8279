package org.thresholdregister.exposure;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "noise_interval")
@Immutable
class StoredInterval {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "noise_interval_seq")
    @SequenceGenerator(name = "noise_interval_seq", sequenceName = "noise_interval_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;
    private int months;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredInterval() {}

    StoredInterval(String site, int months, String enteredBy, Instant enteredAt) {
        this.site = site;
        this.months = months;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    String site() {
        return site;
    }

    int months() {
        return months;
    }
}
