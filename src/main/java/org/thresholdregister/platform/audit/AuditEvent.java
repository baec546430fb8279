package org.thresholdregister.platform.audit;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** One line of the audit trail, written once. */
@Entity
@Immutable
class AuditEvent {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(updatable = false)
    private Instant at;

    @Column(updatable = false)
    private String actor;

    @Column(updatable = false)
    private String action;

    @Column(updatable = false)
    private String subjectType;

    @Column(updatable = false)
    private String subjectId;

    @Column(updatable = false)
    private String detail;

    @SuppressWarnings("NullAway.Init")
    protected AuditEvent() {}

    AuditEvent(Instant at, String actor, String action, String subjectType, String subjectId, String detail) {
        this.at = at;
        this.actor = actor;
        this.action = action;
        this.subjectType = subjectType;
        this.subjectId = subjectId;
        this.detail = detail;
    }
}
