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
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;

/** A baseline revision that waits for a professional, for the list. */
@Entity
@Table(name = "baseline_proposal")
@Immutable
class StoredProposal {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "baseline_proposal_seq")
    @SequenceGenerator(name = "baseline_proposal_seq", sequenceName = "baseline_proposal_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private Ear ear;
    private BaselineChange.Kind kind;
    private LocalDate fromDate;
    private LocalDate toDate;
    private LocalDate firstTestDate;
    private LocalDate secondTestDate;

    @SuppressWarnings("NullAway.Init")
    protected StoredProposal() {}

    StoredProposal(long workerKey, BaselineChange proposal) {
        workerId = workerKey;
        ear = proposal.ear();
        kind = proposal.kind();
        fromDate = proposal.from().date();
        toDate = proposal.to().date();
        firstTestDate = proposal.evidence().getFirst();
        secondTestDate = proposal.evidence().getLast();
    }
}
