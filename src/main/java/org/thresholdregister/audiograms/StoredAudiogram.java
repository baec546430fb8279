package org.thresholdregister.audiograms;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.audiograms.RecordedTest.Signature;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/** A test as it was given; it is never edited, but another may take its place. */
@Entity
@Table(name = "audiogram")
@Immutable
class StoredAudiogram {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "audiogram_seq")
    @SequenceGenerator(name = "audiogram_seq", sequenceName = "audiogram_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private LocalDate testDate;
    private TestPurpose purpose;

    @Embedded
    @EmbeddedColumnNaming("left%s")
    private @Nullable EarThresholds left;

    @Embedded
    @EmbeddedColumnNaming("right%s")
    private @Nullable EarThresholds right;

    private @Nullable BigDecimal hoursSinceNoise;
    private @Nullable Boolean protectorsWorn;
    private String tester;
    private String instrument;
    private String transducer;
    private String room;
    private String remark;
    private @Nullable Long importBatchId;
    private @Nullable String signedBy;
    private @Nullable String signedName;
    private @Nullable Instant signedAt;

    /** 0 while the test counts, its own key once it counts no more. */
    private long takenOut;

    @SuppressWarnings("NullAway.Init")
    protected StoredAudiogram() {}

    StoredAudiogram(long workerKey, Audiogram audiogram, TestFacts facts, long importBatch) {
        this(workerKey, audiogram, facts);
        importBatchId = importBatch;
    }

    StoredAudiogram(long workerKey, Audiogram audiogram, TestFacts facts, Signature signature) {
        this(workerKey, audiogram, facts);
        signedBy = signature.by();
        signedName = signature.name();
        signedAt = signature.at();
    }

    @SuppressWarnings("NullAway.Init")
    private StoredAudiogram(long workerKey, Audiogram audiogram, TestFacts facts) {
        workerId = workerKey;
        testDate = audiogram.date();
        purpose = audiogram.purpose();
        left = new EarThresholds(audiogram, Ear.LEFT, facts.repeatAt1000Hz().left());
        right = new EarThresholds(audiogram, Ear.RIGHT, facts.repeatAt1000Hz().right());
        hoursSinceNoise = facts.hoursSinceNoise().orElse(null);
        protectorsWorn = facts.protectorsWorn().orElse(null);
        tester = facts.tester();
        instrument = facts.instrument();
        transducer = facts.transducer();
        room = facts.room();
        remark = facts.remark();
    }

    /** @throws IllegalStateException while the test is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a test that is not stored has no key");
        }
        return id;
    }

    RecordedTest toRecordedTest() {
        var audiogram = new Audiogram.Builder(testDate, purpose);
        set(audiogram, Ear.LEFT, left);
        set(audiogram, Ear.RIGHT, right);
        return new RecordedTest(
                key(),
                workerId,
                audiogram.build(),
                new TestFacts(
                        Optional.ofNullable(hoursSinceNoise).map(BigDecimal::stripTrailingZeros),
                        Optional.ofNullable(protectorsWorn),
                        tester,
                        instrument,
                        transducer,
                        room,
                        remark,
                        new PerEar<>(repeat(left), repeat(right))),
                signature());
    }

    private Optional<Signature> signature() {
        return signedBy == null || signedName == null || signedAt == null
                ? Optional.empty()
                : Optional.of(new Signature(signedBy, signedName, signedAt));
    }

    private static Threshold repeat(@Nullable EarThresholds thresholds) {
        return thresholds == null ? Threshold.notGiven() : thresholds.repeatAt1000();
    }

    /** An ear without a single threshold comes back from the database as no object at all. */
    private static void set(Audiogram.Builder audiogram, Ear ear, @Nullable EarThresholds thresholds) {
        if (thresholds != null) {
            for (Frequency frequency : Frequency.values()) {
                audiogram.set(ear, frequency, thresholds.at(frequency));
            }
        }
    }
}
