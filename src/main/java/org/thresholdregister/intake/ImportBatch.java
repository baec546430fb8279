package org.thresholdregister.intake;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.SequenceGenerator;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** One import: who brought which files when, and what became of their rows. */
@Entity
class ImportBatch {

    private static final int LONGEST_NAME = 400;

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "import_batch_seq")
    @SequenceGenerator(name = "import_batch_seq", sequenceName = "import_batch_seq", allocationSize = 1)
    private @Nullable Long id;

    private Instant importedAt;
    private String importedBy;
    private int newWorkers;
    private int changedWorkers;
    private int unchangedWorkers;
    private int newTests;
    private int unchangedTests;
    private int newDecisions;
    private int unchangedDecisions;
    private int rowsLeftOut;

    @ElementCollection
    @CollectionTable(name = "import_batch_file", joinColumns = @JoinColumn(name = "import_batch_id"))
    private Set<File> files = new HashSet<>();

    @SuppressWarnings("NullAway.Init")
    protected ImportBatch() {}

    ImportBatch(Instant importedAt, String importedBy, ImportCounts counts, List<UploadedFile> uploads) {
        this.importedAt = importedAt;
        this.importedBy = importedBy;
        this.newWorkers = counts.newWorkers();
        this.changedWorkers = counts.changedWorkers();
        this.unchangedWorkers = counts.unchangedWorkers();
        this.newTests = counts.newTests();
        this.unchangedTests = counts.unchangedTests();
        this.newDecisions = counts.newDecisions();
        this.unchangedDecisions = counts.unchangedDecisions();
        this.rowsLeftOut = counts.rowsLeftOut();
        uploads.forEach(upload -> files.add(new File(upload)));
    }

    /** @throws IllegalStateException while the batch is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("an import that is not stored has no key");
        }
        return id;
    }

    /** A file as it was handed over. */
    @Embeddable
    static class File {

        @Enumerated(EnumType.STRING)
        @JdbcTypeCode(SqlTypes.VARCHAR)
        private Table kind;

        private String name;
        private String sha256;

        @SuppressWarnings("NullAway.Init")
        protected File() {}

        File(UploadedFile upload) {
            kind = upload.table();
            name = upload.name().length() > LONGEST_NAME ? upload.name().substring(0, LONGEST_NAME) : upload.name();
            sha256 = upload.sha256();
        }
    }
}
