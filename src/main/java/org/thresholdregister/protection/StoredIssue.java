package org.thresholdregister.protection;

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

@Entity
@Table(name = "protector_issue")
class StoredIssue {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "protector_issue_seq")
    @SequenceGenerator(name = "protector_issue_seq", sequenceName = "protector_issue_seq", allocationSize = 50)
    private @Nullable Long id;

    private long workerId;
    private long protectorId;
    private String size;
    private LocalDate issuedOn;
    private @Nullable LocalDate refitTestDate;
    private String remark;
    private String enteredBy;
    private Instant enteredAt;
    private @Nullable LocalDate endedOn;

    @Enumerated(EnumType.STRING)
    private Issue.@Nullable How endedAs;

    private String endedBy = "";
    private String withdrawnReason = "";
    private String withdrawnBy = "";

    @SuppressWarnings("NullAway.Init")
    protected StoredIssue() {}

    @SuppressWarnings("NullAway.Init")
    StoredIssue(long workerKey, NewIssue issue, String enteredBy, Instant enteredAt) {
        this.workerId = workerKey;
        this.protectorId = issue.productKey();
        this.size = issue.size();
        this.issuedOn = issue.issuedOn();
        this.refitTestDate = issue.refitFor().orElse(null);
        this.remark = issue.remark();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("an issue that is not stored has no key");
        }
        return id;
    }

    long workerKey() {
        return workerId;
    }

    long productKey() {
        return protectorId;
    }

    void end(Issue.End end, String by) {
        endedOn = end.on();
        endedAs = end.how();
        endedBy = by;
    }

    void withdraw(String reason, String by) {
        withdrawnReason = reason;
        withdrawnBy = by;
    }

    Issue toIssue(Product product) {
        return new Issue(
                key(),
                product,
                new NewIssue(protectorId, size, issuedOn, Optional.ofNullable(refitTestDate), remark),
                endedOn == null || endedAs == null ? Optional.empty() : Optional.of(new Issue.End(endedOn, endedAs)),
                withdrawnReason);
    }
}
