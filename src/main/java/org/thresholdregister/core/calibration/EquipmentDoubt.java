package org.thresholdregister.core.calibration;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;

/** Something that was not in order with the equipment, the room or the tester on the day of a test. */
public sealed interface EquipmentDoubt {

    /** @param inTimeUntil the last day of the last such calibration; empty where none is on record */
    record CalibrationOutOfDate(String instrument, CalibrationKind kind, Optional<LocalDate> inTimeUntil)
            implements EquipmentDoubt {}

    /** The next calibration found the unit outside its tolerances, and no check in between had passed. */
    record CalibrationFoundOutside(String instrument, LocalDate calibrated) implements EquipmentDoubt {}

    /** @param incomplete whether there is one of the day that could not be decided */
    record CheckMissing(String instrument, boolean incomplete) implements EquipmentDoubt {}

    /** A check on that day or before failed, and what it calls for had not been done. */
    record CheckFailed(String instrument, LocalDate failedOn, DailyCheck.Verdict verdict) implements EquipmentDoubt {}

    /** The next check failed, so that the unit may have been off already. */
    record CheckFailedLater(String instrument, LocalDate failedOn, Optional<LocalDate> passedOn)
            implements EquipmentDoubt {}

    /** @param calibratedTo the unit that it belongs to; empty where it was calibrated to none on that day */
    record TransducerOfAnotherUnit(String transducer, String instrument, Optional<String> calibratedTo)
            implements EquipmentDoubt {}

    record RoomTooLoud(String room, LocalDate measured, List<RoomLimit.BandFinding> bands) implements EquipmentDoubt {}

    /** @param room empty where the test names none */
    record RoomNotOnRecord(String room, Why why) implements EquipmentDoubt {
        /** What the record lacks. */
        public enum Why {
            NO_SUCH_ROOM,
            NOT_MEASURED_YET,
            BANDS_MISSING
        }
    }

    /** @param expired the last day of the certificate; empty where there is none */
    record TesterCertificateExpired(String tester, Optional<LocalDate> expired) implements EquipmentDoubt {}

    record TesterWithoutSupervisor(String tester) implements EquipmentDoubt {}

    /** @param named what the record of the test says; may be empty */
    record InstrumentNotRegistered(String named) implements EquipmentDoubt {}

    record TransducerNotRegistered(String named) implements EquipmentDoubt {}

    record TesterNotOnRecord(String named) implements EquipmentDoubt {}
}
