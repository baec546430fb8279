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

/** Nothing of a control is altered but that it is done, once. */
@Entity
@Table(name = "noise_control")
class StoredControl {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "noise_control_seq")
    @SequenceGenerator(name = "noise_control_seq", sequenceName = "noise_control_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;

    @Enumerated(EnumType.STRING)
    private NoiseSubject.Kind subjectKind;

    private String subjectName;

    @Enumerated(EnumType.STRING)
    private NoiseControl.Kind kind;

    private String what;
    private String owner;
    private LocalDate dueOn;
    private @Nullable LocalDate doneOn;
    private String doneNote = "";
    private String doneBy = "";
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredControl() {}

    @SuppressWarnings("NullAway.Init")
    StoredControl(
            NoiseSubject subject,
            NoiseControl.Kind kind,
            String what,
            String owner,
            LocalDate dueOn,
            String enteredBy,
            Instant enteredAt) {
        this.site = subject.site();
        this.subjectKind = subject.kind();
        this.subjectName = subject.name();
        this.kind = kind;
        this.what = what;
        this.owner = owner;
        this.dueOn = dueOn;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    void finish(LocalDate on, String note, String by) {
        this.doneOn = on;
        this.doneNote = note;
        this.doneBy = by;
    }

    /** @throws IllegalStateException while it is not stored */
    NoiseControl toControl() {
        if (id == null) {
            throw new IllegalStateException("a control that is not stored has no key");
        }
        return new NoiseControl(
                id,
                new NoiseSubject(subjectKind, site, subjectName),
                kind,
                what,
                owner,
                dueOn,
                Optional.ofNullable(doneOn),
                doneNote);
    }
}
