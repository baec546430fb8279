package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import org.hibernate.annotations.Immutable;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.Audiometer.Tolerance;

@Entity
@Table(name = "calibration")
@Immutable
class StoredCalibration extends StoredEntry<Facts.Calibration> {

    private long audiometerId;

    @Enumerated(EnumType.STRING)
    private CalibrationKind calibrationKind;

    private LocalDate calibratedOn;
    private String calibratedBy;

    @Enumerated(EnumType.STRING)
    private Tolerance asFound;

    @Enumerated(EnumType.STRING)
    private Tolerance asLeft;

    private String earphone;
    private String leftReadings;
    private String rightReadings;

    @SuppressWarnings("NullAway.Init")
    protected StoredCalibration() {}

    StoredCalibration(Facts.Calibration facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        audiometerId = facts.unit();
        calibrationKind = facts.kind();
        calibratedOn = facts.day();
        calibratedBy = facts.by();
        asFound = facts.asFound();
        asLeft = facts.asLeft();
        earphone = facts.earphone();
        leftReadings = Notation.ofReadings(facts.readings().left());
        rightReadings = Notation.ofReadings(facts.readings().right());
    }

    @Override
    Facts.Calibration facts() {
        return new Facts.Calibration(
                audiometerId,
                calibrationKind,
                calibratedOn,
                calibratedBy,
                asFound,
                asLeft,
                earphone,
                new PerEar<>(Notation.readings(leftReadings), Notation.readings(rightReadings)));
    }
}
