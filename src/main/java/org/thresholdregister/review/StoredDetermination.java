package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.JudgingOptions;

/** What the engine finds about one ear on one test as the record now is, for lists and counts. */
@Entity
@Table(name = "determination")
@Immutable
class StoredDetermination extends DeterminationRow {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "determination_seq")
    @SequenceGenerator(name = "determination_seq", sequenceName = "determination_seq", allocationSize = 100)
    private @Nullable Long id;

    protected StoredDetermination() {}

    StoredDetermination(long workerKey, long testKey, Determination determination, JudgingOptions options) {
        super(workerKey, testKey, determination, options);
    }

    /** The same row written again: it stands as it was made, on that day and by that edition. */
    StoredDetermination(StoredDetermination unchanged) {
        super(unchanged);
    }
}
