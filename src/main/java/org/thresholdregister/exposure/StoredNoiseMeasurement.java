package org.thresholdregister.exposure;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.noise.NoiseDay;
import org.thresholdregister.core.noise.NoisePeriod;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.core.noise.SoundLevel;
import org.thresholdregister.core.noise.TimeWeightedAverage;

@Entity
@Table(name = "noise_measurement")
@Immutable
class StoredNoiseMeasurement {

    private enum ResultKind {
        LEVELS,
        DOSIMETRY,
        AVERAGE
    }

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "noise_measurement_seq")
    @SequenceGenerator(name = "noise_measurement_seq", sequenceName = "noise_measurement_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;

    @Enumerated(EnumType.STRING)
    private NoiseSubject.Kind subjectKind;

    private String subjectName;
    private @Nullable Long workerId;
    private LocalDate measuredOn;

    @Enumerated(EnumType.STRING)
    private MeasurementKind kind;

    private String instrument;
    private boolean calibratedBefore;
    private boolean calibratedAfter;
    private BigDecimal shiftHours;

    @Enumerated(EnumType.STRING)
    private ResultKind resultKind;

    private String levels = "";
    private @Nullable BigDecimal twaDba;

    @Column(name = "dose_from_80")
    private @Nullable BigDecimal doseFrom80;

    @Column(name = "dose_from_90")
    private @Nullable BigDecimal doseFrom90;

    private @Nullable BigDecimal cWeightedDbc;
    private String octaveBands;
    private @Nullable BigDecimal peakDb;
    private String process;
    private String measuredBy;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredNoiseMeasurement() {}

    /**
     * @param worker key of the worker that it is about, where it is about one
     */
    @SuppressWarnings("NullAway.Init")
    StoredNoiseMeasurement(NewMeasurement details, Optional<Long> worker, String enteredBy, Instant enteredAt) {
        this.site = details.subject().site();
        this.subjectKind = details.subject().kind();
        this.subjectName = details.subject().name();
        this.workerId = worker.orElse(null);
        this.measuredOn = details.measuredOn();
        this.kind = details.kind();
        this.instrument = details.instrument();
        this.calibratedBefore = details.calibratedBefore();
        this.calibratedAfter = details.calibratedAfter();
        this.shiftHours = details.shiftHours();
        set(details.result());
        this.cWeightedDbc = details.cWeightedDbc().orElse(null);
        this.octaveBands = details.octaveBandsDb().entrySet().stream()
                .map(band -> band.getKey() + " " + band.getValue().toPlainString())
                .collect(Collectors.joining("\n"));
        this.peakDb = details.peakDb().orElse(null);
        this.process = details.process();
        this.measuredBy = details.measuredBy();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    private void set(NoiseResult result) {
        switch (result) {
            case NoiseResult.Levels(NoiseDay day) -> {
                resultKind = ResultKind.LEVELS;
                levels = day.periods().stream()
                        .map(period ->
                                period.level().decibels() + " " + period.hours().toPlainString())
                        .collect(Collectors.joining("\n"));
            }
            case NoiseResult.Dosimetry(BigDecimal from80, Optional<BigDecimal> from90) -> {
                resultKind = ResultKind.DOSIMETRY;
                doseFrom80 = from80;
                doseFrom90 = from90.orElse(null);
            }
            case NoiseResult.Average(TimeWeightedAverage twa) -> {
                resultKind = ResultKind.AVERAGE;
                twaDba = BigDecimal.valueOf(twa.decibels());
            }
        }
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a measurement that is not stored has no key");
        }
        return id;
    }

    NoiseMeasurement toMeasurement(Optional<NoiseMeasurement.Withdrawal> withdrawal) {
        var bands = new TreeMap<Integer, BigDecimal>();
        octaveBands
                .lines()
                .map(line -> line.split(" ", 2))
                .forEach(band -> bands.put(Integer.valueOf(band[0]), new BigDecimal(band[1])));
        return new NoiseMeasurement(
                key(),
                new NewMeasurement(
                        new NoiseSubject(subjectKind, site, subjectName),
                        measuredOn,
                        kind,
                        instrument,
                        calibratedBefore,
                        calibratedAfter,
                        shiftHours.stripTrailingZeros(),
                        result(),
                        plain(cWeightedDbc),
                        bands,
                        plain(peakDb),
                        process,
                        measuredBy),
                enteredBy,
                enteredAt,
                withdrawal);
    }

    private NoiseResult result() {
        return switch (resultKind) {
            case LEVELS ->
                new NoiseResult.Levels(new NoiseDay(levels.lines()
                        .map(line -> line.split(" ", 2))
                        .map(period -> new NoisePeriod(
                                SoundLevel.ofDba(Double.parseDouble(period[0])), new BigDecimal(period[1])))
                        .toList()));
            case DOSIMETRY ->
                new NoiseResult.Dosimetry(Objects.requireNonNull(doseFrom80).stripTrailingZeros(), plain(doseFrom90));
            case AVERAGE ->
                new NoiseResult.Average(
                        TimeWeightedAverage.ofDba(Objects.requireNonNull(twaDba).doubleValue()));
        };
    }

    private static Optional<BigDecimal> plain(@Nullable BigDecimal stored) {
        return Optional.ofNullable(stored).map(BigDecimal::stripTrailingZeros);
    }
}
