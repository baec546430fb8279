package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.scheduling.WorkShift;

@Entity
@Table(name = "work_shift")
class StoredWorkShift {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "work_shift_seq")
    @SequenceGenerator(name = "work_shift_seq", sequenceName = "work_shift_seq", allocationSize = 1)
    private @Nullable Long id;

    private String site;
    private String name;
    private LocalTime startsAt;
    private LocalTime endsAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredWorkShift() {}

    @SuppressWarnings("NullAway.Init")
    StoredWorkShift(String site, WorkShift shift) {
        this.site = site;
        this.name = shift.name();
        set(shift);
    }

    final void set(WorkShift shift) {
        startsAt = shift.starts();
        endsAt = shift.ends();
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a shift that is not stored has no key");
        }
        return id;
    }

    String site() {
        return site;
    }

    WorkShift toWorkShift() {
        return new WorkShift(name, startsAt, endsAt);
    }
}
