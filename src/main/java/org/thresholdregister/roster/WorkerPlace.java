package org.thresholdregister.roster;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a worker works, and with how much noise. Texts that are not given are empty.
 *
 * @param key the register's own key
 * @param twaDba eight-hour time-weighted average in dBA, as the roster has it
 * @param enrolledFrom first day at or above the action level; absent for those who are not in the programme
 */
public record WorkerPlace(
        long key,
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        String jobTitle,
        String noiseGroup,
        Optional<LocalDate> hireDate,
        Optional<BigDecimal> twaDba,
        Optional<LocalDate> enrolledFrom) {

    public static WorkerPlace of(StoredWorker worker) {
        WorkerDetails details = worker.details();
        return new WorkerPlace(
                worker.key(),
                details.workerId(),
                details.familyName(),
                details.givenName(),
                details.site(),
                details.department(),
                details.jobTitle(),
                details.noiseGroup(),
                details.hireDate(),
                details.twaDba(),
                details.enrolledFrom());
    }
}
