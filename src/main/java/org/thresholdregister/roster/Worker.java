package org.thresholdregister.roster;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.platform.query.SearchText;

@Entity
class Worker {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "worker_seq")
    @SequenceGenerator(name = "worker_seq", sequenceName = "worker_seq", allocationSize = 100)
    private @Nullable Long id;

    private String workerId;
    private @Nullable LocalDate birthDate;
    private @Nullable Sex sex;
    private String familyName;
    private String givenName;
    private @Nullable LocalDate hireDate;
    private @Nullable LocalDate endDate;
    private String site;
    private String department;
    private String jobTitle;
    private String noiseGroup;
    private @Nullable BigDecimal twaDba;
    private @Nullable LocalDate enrolledFrom;
    private String email;
    private String language;

    /** Family name, given name and number, folded; also the order by name. */
    private String search;

    /** The import that the worker was added by. */
    private @Nullable Long importBatchId;

    @Version
    private int version;

    @SuppressWarnings("NullAway.Init")
    protected Worker() {}

    @SuppressWarnings("NullAway.Init")
    Worker(WorkerDetails details, long importBatch) {
        workerId = details.workerId();
        importBatchId = importBatch;
        set(details);
    }

    /** Takes over everything but the number. */
    final void set(WorkerDetails details) {
        birthDate = details.birthDate().orElse(null);
        sex = details.sex().orElse(null);
        familyName = details.familyName();
        givenName = details.givenName();
        hireDate = details.hireDate().orElse(null);
        endDate = details.endDate().orElse(null);
        site = details.site();
        department = details.department();
        jobTitle = details.jobTitle();
        noiseGroup = details.noiseGroup();
        twaDba = details.twaDba().orElse(null);
        enrolledFrom = details.enrolledFrom().orElse(null);
        email = details.email();
        language = details.language();
        search = SearchText.fold(familyName + " " + givenName + " " + workerId);
    }

    /** @throws IllegalStateException while the worker is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a worker that is not stored has no key");
        }
        return id;
    }

    StoredWorker toStored() {
        return new StoredWorker(
                key(),
                new WorkerDetails(
                        workerId,
                        Optional.ofNullable(birthDate),
                        Optional.ofNullable(sex),
                        familyName,
                        givenName,
                        Optional.ofNullable(hireDate),
                        Optional.ofNullable(endDate),
                        site,
                        department,
                        jobTitle,
                        noiseGroup,
                        Optional.ofNullable(twaDba).map(BigDecimal::stripTrailingZeros),
                        Optional.ofNullable(enrolledFrom),
                        email,
                        language));
    }
}
