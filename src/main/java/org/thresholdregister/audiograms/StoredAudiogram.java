package org.thresholdregister.audiograms;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.EmbeddedColumnNaming;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/** A test as it was given; it is never edited. */
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
    private String remark;
    private long importBatchId;

    @SuppressWarnings("NullAway.Init")
    protected StoredAudiogram() {}

    StoredAudiogram(long workerKey, Audiogram audiogram, TestFacts facts, long importBatch) {
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
        remark = facts.remark();
        importBatchId = importBatch;
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
                        remark,
                        new PerEar<>(repeat(left), repeat(right))));
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
