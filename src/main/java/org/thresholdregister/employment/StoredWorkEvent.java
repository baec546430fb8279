package org.thresholdregister.employment;

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
import java.util.Objects;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Engagement;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.WorkEvent;

/** An event of a working life, or the taking back of one. */
@Entity
@Table(name = "employment_event")
@Immutable
class StoredWorkEvent {

    /**
     * Where an entry comes from.
     *
     * @param by account, or what wrote it
     */
    record Origin(
            String by,
            Instant at,
            @Nullable Long importBatch,
            @Nullable Long sale) {}

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "employment_event_seq")
    @SequenceGenerator(name = "employment_event_seq", sequenceName = "employment_event_seq", allocationSize = 50)
    private @Nullable Long id;

    private long workerId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private EventKind kind;

    private LocalDate happenedOn;
    private @Nullable LocalDate untilOn;
    private String site = "";
    private String department = "";
    private String jobTitle = "";
    private String otherParty = "";

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Engagement.@Nullable Kind engagement;

    private boolean supervisedHere;
    private @Nullable Long correctsId;
    private String reason;
    private String enteredBy;
    private Instant enteredAt;
    private @Nullable Long importBatchId;
    private @Nullable Long plantSaleId;

    @SuppressWarnings("NullAway.Init")
    protected StoredWorkEvent() {}

    /** @param corrects the entry whose place it takes, if any */
    StoredWorkEvent(long workerKey, DatedEvent event, @Nullable Long corrects, String reason, Origin origin) {
        this(workerKey, EventKind.of(event.event()), event.day(), corrects, reason, origin);
        switch (event.event()) {
            case WorkEvent.Hired(var at) -> setPlace(at);
            case WorkEvent.Listed(var at) -> setPlace(at);
            case WorkEvent.TakenOver(var predecessor, var at) -> {
                otherParty = predecessor;
                setPlace(at);
            }
            case WorkEvent.Engaged(var with) -> {
                engagement = with.kind();
                otherParty = with.employer();
                supervisedHere = with.supervisedHere();
            }
            case WorkEvent.Moved(var to) -> setPlace(to);
            case WorkEvent.LeaveBegan(var until) -> untilOn = until.orElse(null);
            case WorkEvent.TransferredToSuccessor(var successor) -> otherParty = successor;
            case WorkEvent.Enrolled enrolled -> {}
            case WorkEvent.EnrolmentEnded ended -> {}
            case WorkEvent.Returned returned -> {}
            case WorkEvent.Left left -> {}
        }
    }

    private StoredWorkEvent(
            long workerKey, EventKind kind, LocalDate day, @Nullable Long corrects, String reason, Origin origin) {
        this.workerId = workerKey;
        this.kind = kind;
        this.happenedOn = day;
        this.correctsId = corrects;
        this.reason = reason;
        this.enteredBy = origin.by();
        this.enteredAt = origin.at();
        this.importBatchId = origin.importBatch();
        this.plantSaleId = origin.sale();
    }

    /** The entry that takes another back. */
    static StoredWorkEvent takingBack(StoredWorkEvent other, String reason, Origin origin) {
        return new StoredWorkEvent(other.workerId, EventKind.TAKEN_BACK, other.happenedOn, other.key(), reason, origin);
    }

    private void setPlace(Placement place) {
        site = place.site();
        department = place.department();
        jobTitle = place.jobTitle();
    }

    long key() {
        return Objects.requireNonNull(id, "an event that has not been stored");
    }

    long workerKey() {
        return workerId;
    }

    Optional<Long> corrects() {
        return Optional.ofNullable(correctsId);
    }

    /** Empty where it takes another entry back. */
    Optional<DatedEvent> event() {
        Placement place = new Placement(site, department, jobTitle);
        Optional<WorkEvent> event = switch (kind) {
            case HIRED -> Optional.of(new WorkEvent.Hired(place));
            case LISTED -> Optional.of(new WorkEvent.Listed(place));
            case TAKEN_OVER -> Optional.of(new WorkEvent.TakenOver(otherParty, place));
            case ENGAGED ->
                Optional.of(new WorkEvent.Engaged(new Engagement(
                        Objects.requireNonNull(engagement, "an engagement has a kind"), otherParty, supervisedHere)));
            case ENROLLED -> Optional.of(new WorkEvent.Enrolled());
            case ENROLMENT_ENDED -> Optional.of(new WorkEvent.EnrolmentEnded());
            case MOVED -> Optional.of(new WorkEvent.Moved(place));
            case LEAVE_BEGAN -> Optional.of(new WorkEvent.LeaveBegan(Optional.ofNullable(untilOn)));
            case RETURNED -> Optional.of(new WorkEvent.Returned());
            case LEFT -> Optional.of(new WorkEvent.Left());
            case SOLD -> Optional.of(new WorkEvent.TransferredToSuccessor(otherParty));
            case TAKEN_BACK -> Optional.empty();
        };
        return event.map(what -> new DatedEvent(happenedOn, what));
    }

    LifeEntry toEntry(boolean inForce) {
        return new LifeEntry(
                event(), happenedOn, inForce, corrects().isPresent(), reason, enteredBy, Optional.of(enteredAt));
    }
}
