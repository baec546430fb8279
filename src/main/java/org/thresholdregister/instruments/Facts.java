package org.thresholdregister.instruments;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.Audiometer.Tolerance;
import org.thresholdregister.core.calibration.Audiometer.Type;
import org.thresholdregister.core.calibration.DailyCheck;
import org.thresholdregister.core.calibration.Headset;
import org.thresholdregister.core.calibration.MeterReading;
import org.thresholdregister.core.calibration.OctaveBand;
import org.thresholdregister.core.calibration.Tester.Qualification;

/**
 * What can be put on record about equipment, rooms and testers. Texts that are not given are empty; an empty site stands
 * for what travels between the sites. Other entries name a unit, a headset, a room or a tester by its key.
 */
public sealed interface Facts {

    /**
     * An audiometer.
     *
     * @param identity as tests name it, one of its kind in the register
     * @param serialNumber the maker's
     * @param from first day in use and of these records; tests before it are not looked at
     * @param to last day in use
     */
    record Unit(
            String site,
            String identity,
            String serialNumber,
            Type type,
            OutputLimits limits,
            LocalDate from,
            Optional<LocalDate> to)
            implements Facts {}

    /**
     * A pair of earphones.
     *
     * @param earphone their type; Appendix E has tables for TDH-39 and TDH-49
     */
    record Earphones(String site, String identity, Headset.Type type, String earphone) implements Facts {}

    /** To which unit a headset is calibrated, from when to when. */
    record CalibratedTo(long headset, long unit, LocalDate from, Optional<LocalDate> to) implements Facts {}

    /**
     * A calibration.
     *
     * @param by who made it
     * @param earphone the type measured on, for the tables of Appendix E
     * @param readings of the sound level meter with the dial at 70 dB HL, dB; may be none
     */
    record Calibration(
            long unit,
            CalibrationKind kind,
            LocalDate day,
            String by,
            Tolerance asFound,
            Tolerance asLeft,
            String earphone,
            PerEar<Map<Frequency, MeterReading>> readings)
            implements Facts {}

    /**
     * A daily functional check.
     *
     * @param person who was tested, with known and stable thresholds
     * @param reference that person's known thresholds
     * @param heard what the listening check heard, where it found a fault
     */
    record Check(
            long unit,
            Optional<Long> headset,
            LocalDate day,
            String by,
            String person,
            PerEar<Map<Frequency, Threshold>> reference,
            PerEar<Map<Frequency, Threshold>> readings,
            DailyCheck.Listening listening,
            String heard)
            implements Facts {

        public DailyCheck.Result result() {
            return DailyCheck.judge(reference, readings, listening);
        }

        /** Levels by frequency as they are typed: seven in test order, {@code -} where there is none. */
        public String levels(Map<Frequency, Threshold> thresholds) {
            return Notation.ofThresholds(thresholds);
        }
    }

    /** A room for hearing tests. */
    record Room(String site, String name, LocalDate from, Optional<LocalDate> to) implements Facts {}

    /**
     * Background levels of a room.
     *
     * @param meter with what they were measured
     * @param levels in dB; a band that was not measured is absent
     */
    record Measurement(long room, LocalDate day, String by, String meter, Map<OctaveBand, MeterReading> levels)
            implements Facts {}

    /** @param supervisor the professional to whom the tester is responsible */
    record Person(String site, String name, Qualification qualification, String supervisor) implements Facts {}

    /** A tester's certificate. */
    record Certificate(long tester, String number, LocalDate issued, Optional<LocalDate> expires) implements Facts {}
}
