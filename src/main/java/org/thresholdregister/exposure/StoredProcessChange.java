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
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Nothing of a change is altered but that it is settled, once. */
@Entity
@Table(name = "process_change")
class StoredProcessChange {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "process_change_seq")
    @SequenceGenerator(name = "process_change_seq", sequenceName = "process_change_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;

    @Enumerated(EnumType.STRING)
    private NoiseSubject.Kind subjectKind;

    private String subjectName;
    private LocalDate changedOn;
    private LocalDate remeasureBy;
    private String what;
    private @Nullable LocalDate settledOn;
    private String settledReason = "";
    private String settledBy = "";
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredProcessChange() {}

    @SuppressWarnings("NullAway.Init")
    StoredProcessChange(
            NoiseSubject subject,
            LocalDate changedOn,
            LocalDate remeasureBy,
            String what,
            String enteredBy,
            Instant enteredAt) {
        this.site = subject.site();
        this.subjectKind = subject.kind();
        this.subjectName = subject.name();
        this.changedOn = changedOn;
        this.remeasureBy = remeasureBy;
        this.what = what;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    void settle(LocalDate on, String reason, String by) {
        this.settledOn = on;
        this.settledReason = reason;
        this.settledBy = by;
    }

    /** @throws IllegalStateException while it is not stored */
    ProcessChange toChange() {
        if (id == null) {
            throw new IllegalStateException("a change that is not stored has no key");
        }
        return new ProcessChange(
                id,
                new NoiseSubject(subjectKind, site, subjectName),
                changedOn,
                remeasureBy,
                what,
                Optional.ofNullable(settledOn),
                settledReason);
    }
}
