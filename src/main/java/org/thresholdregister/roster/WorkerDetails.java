package org.thresholdregister.roster;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.judging.WorkerFacts;

/**
 * What the roster says of a worker. Texts that are not given are empty.
 *
 * @param workerId the plant's number for the worker, leading zeros and all
 * @param endDate last day of employment; absent while employed
 * @param noiseGroup workers with like exposure, as the plant names the group
 * @param twaDba eight-hour time-weighted average in dBA
 * @param enrolledFrom first day at or above the action level
 * @param language the language that letters are written in, {@code en} or {@code es}
 */
public record WorkerDetails(
        String workerId,
        Optional<LocalDate> birthDate,
        Optional<Sex> sex,
        String familyName,
        String givenName,
        Optional<LocalDate> hireDate,
        Optional<LocalDate> endDate,
        String site,
        String department,
        String jobTitle,
        String noiseGroup,
        Optional<BigDecimal> twaDba,
        Optional<LocalDate> enrolledFrom,
        String email,
        String language) {

    /** The site, or null where none is given, as a scope asks for it. */
    public @Nullable String siteIfGiven() {
        return site.isEmpty() ? null : site;
    }

    /** The same worker with another place and other dates of employment. */
    public WorkerDetails employed(
            Optional<LocalDate> hired,
            Optional<LocalDate> end,
            String atSite,
            String inDepartment,
            String asJob,
            Optional<LocalDate> enrolled) {
        return new WorkerDetails(
                workerId,
                birthDate,
                sex,
                familyName,
                givenName,
                hired,
                end,
                atSite,
                inDepartment,
                asJob,
                noiseGroup,
                twaDba,
                enrolled,
                email,
                language);
    }

    /** What the rules need to know. */
    public WorkerFacts facts() {
        return new WorkerFacts(workerId, birthDate, sex, enrolledFrom, endDate);
    }
}
