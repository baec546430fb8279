package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.judging.WorkerFacts;

/**
 * One worker of a roster file. Texts are empty where nothing is given.
 *
 * @param endDateLeftBlank the file has the column and nothing in this row's cell: the worker has not left
 * @param twaDba the worker's noise exposure as an eight-hour time-weighted average in dBA, 0 to 140
 * @param enrolledFrom first day at or above the action level
 * @param language the language for letters: English or Spanish
 * @param contentHash tells differing rows of one file apart; means nothing between files
 */
public record RosterRow(
        int line,
        String workerId,
        Optional<LocalDate> birthDate,
        Optional<Sex> sex,
        String familyName,
        String givenName,
        Optional<LocalDate> hireDate,
        Optional<LocalDate> endDate,
        boolean endDateLeftBlank,
        String site,
        String department,
        String jobTitle,
        String noiseGroup,
        Optional<BigDecimal> twaDba,
        Optional<LocalDate> enrolledFrom,
        String email,
        Optional<Locale> language,
        long contentHash) {

    /** What the rules need to know of this worker. */
    public WorkerFacts facts() {
        return new WorkerFacts(workerId, birthDate, sex, enrolledFrom, endDate);
    }

    /** The line only: the rest is personal and stays out of logs. */
    @Override
    public String toString() {
        return "roster row on line " + line;
    }
}
