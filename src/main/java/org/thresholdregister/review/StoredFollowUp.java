package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;

/** Something owed to a worker; whether it is overdue is asked on the day. */
@Entity
@Table(name = "follow_up")
@Immutable
class StoredFollowUp {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "follow_up_seq")
    @SequenceGenerator(name = "follow_up_seq", sequenceName = "follow_up_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private FollowUpKind kind;
    private LocalDate dueDate;
    private @Nullable LocalDate testDate;
    private Ears ears;
    private String ruleSet;

    @SuppressWarnings("NullAway.Init")
    protected StoredFollowUp() {}

    StoredFollowUp(long workerKey, FollowUp followUp, String ruleSet) {
        workerId = workerKey;
        kind = followUp.kind();
        dueDate = followUp.dueDate();
        testDate = followUp.testDate().orElse(null);
        ears = followUp.ears();
        this.ruleSet = ruleSet;
    }
}
