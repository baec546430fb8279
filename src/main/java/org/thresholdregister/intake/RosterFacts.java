package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.intake.WorkerChange.Field;
import org.thresholdregister.roster.WorkerDetails;

/** What a roster row makes of a worker. */
final class RosterFacts {

    private RosterFacts() {}

    static WorkerDetails of(RosterRow row) {
        return new WorkerDetails(
                row.workerId(),
                row.birthDate(),
                row.sex(),
                row.familyName(),
                row.givenName(),
                row.hireDate(),
                row.endDate(),
                row.site(),
                row.department(),
                row.jobTitle(),
                row.noiseGroup(),
                row.twaDba().map(BigDecimal::stripTrailingZeros),
                row.enrolledFrom(),
                row.email(),
                row.language().map(Locale::getLanguage).orElse(""));
    }

    /**
     * What is on record, with what the row gives. A cell that is blank, missing or unreadable says nothing, so that
     * nothing is lost; only a blank end date says something: that the worker has not left.
     */
    static WorkerDetails merged(WorkerDetails stored, RosterRow row) {
        WorkerDetails given = of(row);
        return new WorkerDetails(
                stored.workerId(),
                given.birthDate().or(stored::birthDate),
                given.sex().or(stored::sex),
                given(given.familyName(), stored.familyName()),
                given(given.givenName(), stored.givenName()),
                given.hireDate().or(stored::hireDate),
                row.endDateLeftBlank() ? Optional.empty() : given.endDate().or(stored::endDate),
                given(given.site(), stored.site()),
                given(given.department(), stored.department()),
                given(given.jobTitle(), stored.jobTitle()),
                given(given.noiseGroup(), stored.noiseGroup()),
                given.twaDba().or(stored::twaDba),
                given.enrolledFrom().or(stored::enrolledFrom),
                given(given.email(), stored.email()),
                given(given.language(), stored.language()));
    }

    private static String given(String text, String otherwise) {
        return text.isEmpty() ? otherwise : text;
    }

    static WorkerChange change(WorkerDetails before, WorkerDetails after) {
        List<Field> fields = new ArrayList<>();
        for (RosterColumn column : RosterColumn.values()) {
            String old = text(before, column);
            String changed = text(after, column);
            if (!old.equals(changed)) {
                fields.add(new Field(column, old, changed));
            }
        }
        return new WorkerChange(before.workerId(), fields);
    }

    /** The fact as a file writes it; empty where it is not given. */
    static String text(WorkerDetails worker, RosterColumn column) {
        return switch (column) {
            case WORKER_ID -> worker.workerId();
            case BIRTH_DATE -> text(worker.birthDate());
            case SEX -> worker.sex().map(Sex::code).orElse("");
            case FAMILY_NAME -> worker.familyName();
            case GIVEN_NAME -> worker.givenName();
            case HIRE_DATE -> text(worker.hireDate());
            case END_DATE -> text(worker.endDate());
            case SITE -> worker.site();
            case DEPARTMENT -> worker.department();
            case JOB_TITLE -> worker.jobTitle();
            case NOISE_GROUP -> worker.noiseGroup();
            case TWA_DBA -> worker.twaDba().map(BigDecimal::toPlainString).orElse("");
            case ENROLLED_FROM -> text(worker.enrolledFrom());
            case EMAIL -> worker.email();
            case LANGUAGE -> worker.language();
        };
    }

    private static String text(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse("");
    }
}
