package org.thresholdregister.instruments;

import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.MappedSuperclass;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** One entry of a line: the first, or a correction of it. Nothing changes it; the last one of a line counts. */
@MappedSuperclass
abstract class StoredEntry<F extends Facts> {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "instrument_entry_seq")
    @SequenceGenerator(name = "instrument_entry_seq", sequenceName = "instrument_entry_seq", allocationSize = 50)
    private @Nullable Long id;

    private @Nullable Long corrects;
    private boolean withdrawn;
    private String reason;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredEntry() {}

    StoredEntry(Change change, String enteredBy, Instant enteredAt) {
        this.corrects = change.corrects().orElse(null);
        this.withdrawn = change.withdraws();
        this.reason = change.reason();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    abstract F facts();

    /** @throws IllegalStateException while it is not stored */
    long id() {
        if (id == null) {
            throw new IllegalStateException("an entry that is not stored has no key");
        }
        return id;
    }

    /** The key of the line. */
    long key() {
        return corrects == null ? id() : corrects;
    }

    boolean isWithdrawn() {
        return withdrawn;
    }

    Entry<F> toEntry() {
        return new Entry<>(key(), facts(), corrects != null, reason, enteredBy, enteredAt);
    }
}
