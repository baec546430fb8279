package org.thresholdregister.exposure;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "programme_act")
@Immutable
class StoredProgrammeAct {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "programme_act_seq")
    @SequenceGenerator(name = "programme_act_seq", sequenceName = "programme_act_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;

    @Enumerated(EnumType.STRING)
    private ProgrammeAct.Kind kind;

    private LocalDate effectiveOn;
    private @Nullable BigDecimal twaDba;
    private @Nullable Long measurementId;
    private String reason;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredProgrammeAct() {}

    StoredProgrammeAct(long worker, ProgrammeAct act, Optional<Long> measurement) {
        this.workerId = worker;
        this.kind = act.kind();
        this.effectiveOn = act.on();
        this.twaDba = act.twaDba().orElse(null);
        this.measurementId = measurement.orElse(null);
        this.reason = act.reason();
        this.enteredBy = act.enteredBy();
        this.enteredAt = act.enteredAt();
    }

    long worker() {
        return workerId;
    }

    ProgrammeAct toAct() {
        return new ProgrammeAct(
                kind,
                effectiveOn,
                Optional.ofNullable(twaDba).map(BigDecimal::stripTrailingZeros),
                reason,
                enteredBy,
                enteredAt);
    }
}
