package org.thresholdregister.exposure;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "standard_posting")
@Immutable
class StoredPosting {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "standard_posting_seq")
    @SequenceGenerator(name = "standard_posting_seq", sequenceName = "standard_posting_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;
    private String place;
    private LocalDate seenOn;
    private String seenBy;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredPosting() {}

    StoredPosting(Posting posting, String enteredBy, Instant enteredAt) {
        this.site = posting.site();
        this.place = posting.place();
        this.seenOn = posting.seenOn();
        this.seenBy = posting.seenBy();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    Posting toPosting() {
        return new Posting(site, place, seenOn, seenBy);
    }
}
