package org.thresholdregister.exposure;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "noise_result_told")
@Immutable
class StoredTelling {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "noise_result_told_seq")
    @SequenceGenerator(name = "noise_result_told_seq", sequenceName = "noise_result_told_seq", allocationSize = 100)
    private @Nullable Long id;

    private long measurementId;
    private long workerId;
    private LocalDate toldOn;

    @Enumerated(EnumType.STRING)
    private HowTold how;

    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredTelling() {}

    StoredTelling(long measurement, long worker, LocalDate toldOn, HowTold how, String enteredBy, Instant enteredAt) {
        this.measurementId = measurement;
        this.workerId = worker;
        this.toldOn = toldOn;
        this.how = how;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    long worker() {
        return workerId;
    }

    Told toTold() {
        return new Told(toldOn, how);
    }
}
