package org.thresholdregister.letters;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.roster.StoredWorker;

/** A letter as it was printed; that it was given is added once. */
@Entity
@Table(name = "letter")
class StoredLetter {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "letter_seq")
    @SequenceGenerator(name = "letter_seq", sequenceName = "letter_seq", allocationSize = 10)
    private @Nullable Long id;

    private long workerId;

    @Enumerated(EnumType.STRING)
    private LetterKind kind;

    @Enumerated(EnumType.STRING)
    private Language language;

    private long testId;
    private LocalDate testDate;
    private Ears ears;
    private long documentId;
    private LocalDate printedOn;
    private String printedBy;
    private @Nullable LocalDate givenOn;

    @Enumerated(EnumType.STRING)
    private @Nullable LetterMethod method;

    private @Nullable String givenBy;

    @SuppressWarnings("NullAway.Init")
    protected StoredLetter() {}

    StoredLetter(
            long workerKey,
            LetterOccasion occasion,
            Language language,
            long documentKey,
            LocalDate printedOn,
            String printedBy) {
        this.workerId = workerKey;
        this.kind = occasion.kind();
        this.language = language;
        this.testId = occasion.testKey();
        this.testDate = occasion.testDate();
        this.ears = occasion.ears();
        this.documentId = documentKey;
        this.printedOn = printedOn;
        this.printedBy = printedBy;
    }

    long key() {
        return Objects.requireNonNull(id, "a letter that has not been stored");
    }

    long workerKey() {
        return workerId;
    }

    long documentKey() {
        return documentId;
    }

    /** @throws IllegalStateException where it was given already */
    void give(LocalDate day, LetterMethod how, String by) {
        if (givenOn != null) {
            throw new IllegalStateException("a letter is given once");
        }
        givenOn = day;
        method = how;
        givenBy = by;
    }

    PrintedLetter toPrinted(StoredWorker worker) {
        var details = worker.details();
        return new PrintedLetter(
                key(),
                new LetterOccasion(details.workerId(), kind, testId, testDate, ears),
                details.familyName(),
                details.givenName(),
                details.site(),
                language,
                printedOn,
                printedBy,
                Optional.ofNullable(givenOn),
                Optional.ofNullable(method));
    }
}
