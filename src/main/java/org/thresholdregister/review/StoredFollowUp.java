package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;

/** A follow-up of a test among the tasks, for the queries of other features; it is stored as a {@link StoredTask}. */
@Entity
@Table(name = "test_follow_up")
@Immutable
class StoredFollowUp {

    @Id
    private long id;

    private long workerId;
    private FollowUpKind kind;
    private LocalDate dueDate;
    private @Nullable LocalDate testDate;
    private Ears ears;
    private String ruleSet;

    @SuppressWarnings("NullAway.Init")
    protected StoredFollowUp() {}
}
