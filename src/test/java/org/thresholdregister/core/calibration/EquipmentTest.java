package org.thresholdregister.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.calibration.Audiometer.Calibration;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.Audiometer.Check;
import org.thresholdregister.core.calibration.Audiometer.Tolerance;
import org.thresholdregister.core.calibration.Audiometer.Type;
import org.thresholdregister.core.calibration.DailyCheck.Verdict;
import org.thresholdregister.core.calibration.EquipmentDoubt.RoomNotOnRecord.Why;
import org.thresholdregister.core.calibration.Tester.Qualification;

/** What of the equipment was not in order on a day: 29 CFR 1910.95(g)(3), (h)(4), (h)(5), and common practice. */
class EquipmentTest {

    private static final LocalDate BOUGHT = day("2025-03-03");

    private static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }

    private static Calibration calibration(CalibrationKind kind, String day) {
        return new Calibration(kind, day(day), Tolerance.WITHIN, Tolerance.WITHIN);
    }

    private static Check check(String day, Verdict verdict) {
        return new Check(day(day), verdict);
    }

    private static Audiometer unit(List<Calibration> calibrations, List<Check> checks) {
        return new Audiometer(1, "U-1", Type.MANUAL, BOUGHT, Optional.empty(), calibrations, checks);
    }

    private static Audiometer calibrated(Check... checks) {
        return unit(List.of(calibration(CalibrationKind.EXHAUSTIVE, "2025-03-03")), List.of(checks));
    }

    private static Headset headset(long unit) {
        return new Headset(
                "H-1", Headset.Type.SUPRA_AURAL, List.of(new Headset.CalibratedTo(unit, BOUGHT, Optional.empty())));
    }

    private static TestRoom room(int levelDb) {
        Map<OctaveBand, MeterReading> levels = new EnumMap<>(OctaveBand.class);
        for (OctaveBand band : OctaveBand.values()) {
            levels.put(band, MeterReading.ofDecibels(levelDb));
        }
        return new TestRoom("Booth", BOUGHT, Optional.empty(), List.of(new TestRoom.Measurement(BOUGHT, levels)));
    }

    private static Tester tester(Qualification qualification, String issued, String expires) {
        return new Tester(
                "A. Vale",
                qualification,
                List.of(new Tester.Certificate(day(issued), Optional.of(day(expires)))),
                true);
    }

    private static Equipment equipment(Audiometer unit) {
        return new Equipment(
                true,
                List.of(unit),
                List.of(headset(1)),
                List.of(room(30)),
                List.of(tester(Qualification.CERTIFIED_TECHNICIAN, "2024-01-01", "2029-01-01")));
    }

    private static TestSetting on(String day) {
        return new TestSetting(day(day), "u-1 ", "H-1", "", "A. Vale");
    }

    private static List<EquipmentDoubt> doubts(Audiometer unit, String day) {
        return equipment(unit).doubts(on(day));
    }

    @Test
    void whereAllIsInOrderNothingIsSaid() {
        assertThat(doubts(calibrated(check("2025-05-05", Verdict.PASSED)), "2025-05-05"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "2025-03-03, 2026-03-03, true",
        "2025-03-03, 2026-03-04, false",
        "2024-02-29, 2025-02-28, true",
        "2024-02-29, 2025-03-01, false",
        "2023-02-28, 2024-02-28, true",
        "2023-02-28, 2024-02-29, false",
    })
    void theYearlyCalibrationIsInTimeUntilItsAnniversary(String calibrated, String tested, boolean inTime) {
        Audiometer unit = new Audiometer(
                1,
                "U-1",
                Type.MANUAL,
                day("2020-01-01"),
                Optional.empty(),
                List.of(
                        calibration(CalibrationKind.EXHAUSTIVE, "2022-06-01"),
                        calibration(CalibrationKind.ACOUSTIC, calibrated)),
                List.of());
        Optional<LocalDate> until = unit.inTimeUntil(CalibrationKind.ACOUSTIC, day(tested));
        assertThat(!day(tested).isAfter(until.orElseThrow())).isEqualTo(inTime);
    }

    @ParameterizedTest
    @CsvSource({"2025-03-03, 2027-03-03", "2024-02-29, 2026-02-28"})
    void theExhaustiveOneHoldsTwoYearsAndCountsAsAnAcousticOne(String calibrated, String until) {
        Audiometer unit = unit(List.of(calibration(CalibrationKind.EXHAUSTIVE, calibrated)), List.of());
        assertThat(unit.inTimeUntil(CalibrationKind.EXHAUSTIVE, day("2025-06-01")))
                .contains(day(until));
        assertThat(unit.inTimeUntil(CalibrationKind.ACOUSTIC, day("2025-06-01")))
                .contains(day(calibrated).plusYears(1));
    }

    @Test
    void anAcousticOneIsNoExhaustiveOneAndOneOfLaterDoesNotCountYet() {
        Audiometer unit = unit(List.of(calibration(CalibrationKind.ACOUSTIC, "2025-03-03")), List.of());
        assertThat(unit.inTimeUntil(CalibrationKind.EXHAUSTIVE, day("2025-06-01")))
                .isEmpty();
        assertThat(unit.inTimeUntil(CalibrationKind.ACOUSTIC, day("2025-03-02")))
                .isEmpty();
        assertThat(doubts(unit, "2025-03-03"))
                .contains(new EquipmentDoubt.CalibrationOutOfDate("U-1", CalibrationKind.EXHAUSTIVE, Optional.empty()));
    }

    @Test
    void aCalibrationThatLeftTheUnitOutsideItsTolerancesIsNone() {
        Audiometer unit = unit(
                List.of(new Calibration(CalibrationKind.EXHAUSTIVE, BOUGHT, Tolerance.OUTSIDE, Tolerance.OUTSIDE)),
                List.of());
        assertThat(unit.inTimeUntil(CalibrationKind.EXHAUSTIVE, BOUGHT)).isEmpty();
    }

    @Test
    void aDayWithoutACheckOrWithAnIncompleteOneSaysSo() {
        assertThat(doubts(calibrated(), "2025-05-05")).containsExactly(new EquipmentDoubt.CheckMissing("U-1", false));
        assertThat(doubts(calibrated(check("2025-05-05", Verdict.INCOMPLETE)), "2025-05-05"))
                .containsExactly(new EquipmentDoubt.CheckMissing("U-1", true));
        assertThat(doubts(
                        calibrated(check("2025-05-05", Verdict.INCOMPLETE), check("2025-05-05", Verdict.PASSED)),
                        "2025-05-05"))
                .as("of one day the last counts")
                .isEmpty();
    }

    @Test
    void aDeviationStandsUntilACalibrationWhateverLaterChecksSay() {
        Audiometer unit = unit(
                List.of(
                        calibration(CalibrationKind.EXHAUSTIVE, "2025-03-03"),
                        new Calibration(
                                CalibrationKind.ACOUSTIC, day("2025-05-08"), Tolerance.OUTSIDE, Tolerance.WITHIN)),
                List.of(
                        check("2025-05-02", Verdict.PASSED),
                        check("2025-05-05", Verdict.DEVIATES),
                        check("2025-05-06", Verdict.PASSED),
                        check("2025-05-08", Verdict.PASSED)));
        EquipmentDoubt failed = new EquipmentDoubt.CheckFailed("U-1", day("2025-05-05"), Verdict.DEVIATES);
        assertThat(doubts(unit, "2025-05-05")).containsExactly(failed);
        assertThat(doubts(unit, "2025-05-06")).containsExactly(failed);
        assertThat(doubts(unit, "2025-05-07")).containsExactly(failed);
        assertThat(doubts(unit, "2025-05-08")).isEmpty();
        assertThat(doubts(unit, "2025-05-02"))
                .as("tested after the last good check")
                .containsExactly(
                        new EquipmentDoubt.CheckFailedLater("U-1", day("2025-05-05"), Optional.of(day("2025-05-02"))));
    }

    @Test
    void aFaultThatIsHeardStandsUntilACheckPasses() {
        Audiometer unit = calibrated(
                check("2025-05-05", Verdict.FAULT_HEARD),
                check("2025-05-06", Verdict.INCOMPLETE),
                check("2025-05-07", Verdict.PASSED));
        EquipmentDoubt failed = new EquipmentDoubt.CheckFailed("U-1", day("2025-05-05"), Verdict.FAULT_HEARD);
        assertThat(doubts(unit, "2025-05-05")).containsExactly(failed);
        assertThat(doubts(unit, "2025-05-06")).containsExactly(failed);
        assertThat(doubts(unit, "2025-05-07")).isEmpty();
    }

    @Test
    void aUnitFoundWithinItsTolerancesAfterAFailedCheckWasNotOffBefore() {
        Audiometer unit = unit(
                List.of(
                        calibration(CalibrationKind.EXHAUSTIVE, "2025-03-03"),
                        calibration(CalibrationKind.ACOUSTIC, "2025-05-06")),
                List.of(check("2025-05-02", Verdict.PASSED), check("2025-05-05", Verdict.DEVIATES)));
        assertThat(doubts(unit, "2025-05-02")).isEmpty();
        assertThat(doubts(unit, "2025-05-05"))
                .as("it was to be calibrated before tests count")
                .hasSize(1);
    }

    @Test
    void aUnitFoundOutsideItsTolerancesPutsInDoubtWhatWasTestedSinceTheLastGoodCheck() {
        Audiometer unit = unit(
                List.of(
                        calibration(CalibrationKind.EXHAUSTIVE, "2025-03-03"),
                        new Calibration(
                                CalibrationKind.ACOUSTIC, day("2025-05-08"), Tolerance.OUTSIDE, Tolerance.WITHIN)),
                List.of(check("2025-05-05", Verdict.PASSED), check("2025-05-07", Verdict.PASSED)));
        assertThat(doubts(unit, "2025-05-05")).isEmpty();
        assertThat(doubts(unit, "2025-05-07"))
                .containsExactly(new EquipmentDoubt.CalibrationFoundOutside("U-1", day("2025-05-08")));
    }

    @Test
    void earphonesOfAnotherUnitAreNamedWithTheirOwn() {
        Audiometer other = new Audiometer(2, "U-2", Type.MANUAL, BOUGHT, Optional.empty(), List.of(), List.of());
        Equipment two = new Equipment(
                true,
                List.of(calibrated(check("2025-05-05", Verdict.PASSED)), other),
                List.of(headset(2)),
                List.of(room(30)),
                List.of(tester(Qualification.CERTIFIED_TECHNICIAN, "2024-01-01", "2029-01-01")));
        assertThat(two.doubts(on("2025-05-05")))
                .containsExactly(new EquipmentDoubt.TransducerOfAnotherUnit("H-1", "U-1", Optional.of("U-2")));
    }

    @Test
    void ofTwoUnitsTheLaterCalibrationOfTheEarphonesCounts() {
        Headset moved = new Headset(
                "H-1",
                Headset.Type.INSERT,
                List.of(
                        new Headset.CalibratedTo(1, day("2025-01-01"), Optional.empty()),
                        new Headset.CalibratedTo(2, day("2025-06-01"), Optional.of(day("2025-06-30")))));
        assertThat(moved.unitOn(day("2024-12-31"))).isEmpty();
        assertThat(moved.unitOn(day("2025-05-31"))).contains(1L);
        assertThat(moved.unitOn(day("2025-06-30"))).contains(2L);
        assertThat(moved.unitOn(day("2025-07-01"))).contains(1L);
    }

    @Test
    void aRoomAboveTableD1IsTooLoudAndOneWithoutLevelsIsNotOnRecord() {
        Audiometer unit = calibrated(check("2025-05-05", Verdict.PASSED));
        Equipment loud = new Equipment(
                true,
                List.of(unit),
                List.of(headset(1)),
                List.of(room(45)),
                equipment(unit).testers());
        assertThat(loud.doubts(on("2025-05-05")))
                .singleElement()
                .isInstanceOfSatisfying(
                        EquipmentDoubt.RoomTooLoud.class,
                        room -> assertThat(room.bands())
                                .extracting(RoomLimit.BandFinding::band)
                                .containsExactly(OctaveBand.HZ_500, OctaveBand.HZ_1000));
        Equipment none = new Equipment(
                true,
                List.of(unit),
                List.of(headset(1)),
                List.of(),
                equipment(unit).testers());
        assertThat(none.doubts(on("2025-05-05")))
                .containsExactly(new EquipmentDoubt.RoomNotOnRecord("", Why.NO_SUCH_ROOM));
        TestRoom unmeasured = new TestRoom("Booth", BOUGHT, Optional.empty(), List.of());
        Equipment silent = new Equipment(
                true,
                List.of(unit),
                List.of(headset(1)),
                List.of(unmeasured),
                equipment(unit).testers());
        assertThat(silent.doubts(on("2025-05-05")))
                .containsExactly(new EquipmentDoubt.RoomNotOnRecord("Booth", Why.NOT_MEASURED_YET));
        assertThat(new Equipment(
                                true,
                                List.of(unit),
                                List.of(headset(1)),
                                List.of(room(30), unmeasured),
                                equipment(unit).testers())
                        .doubts(on("2025-05-05")))
                .as("with two rooms the record has to say which")
                .containsExactly(new EquipmentDoubt.RoomNotOnRecord("", Why.NO_SUCH_ROOM));
    }

    @ParameterizedTest
    @CsvSource({
        "MANUAL, CERTIFIED_TECHNICIAN, true",
        "SELF_RECORDING, CERTIFIED_TECHNICIAN, true",
        "MICROPROCESSOR, CERTIFIED_TECHNICIAN, false",
        "MICROPROCESSOR, OTHER_TECHNICIAN, false",
        "MANUAL, OTHER_TECHNICIAN, true",
        "MANUAL, COMPETENT_TECHNICIAN, false",
        "MANUAL, AUDIOLOGIST, false",
        "MANUAL, PHYSICIAN, false",
        "MANUAL, OTOLARYNGOLOGIST, false",
    })
    void whoNeedsACertificateOnWhichUnit(Type type, Qualification qualification, boolean flagged) {
        Audiometer unit = new Audiometer(
                1,
                "U-1",
                type,
                BOUGHT,
                Optional.empty(),
                List.of(calibration(CalibrationKind.EXHAUSTIVE, "2025-03-03")),
                List.of(check("2025-05-05", Verdict.PASSED), check("2025-05-04", Verdict.PASSED)));
        Equipment equipment = new Equipment(
                true,
                List.of(unit),
                List.of(headset(1)),
                List.of(room(30)),
                List.of(tester(qualification, "2020-05-04", "2025-05-04")));
        assertThat(equipment.doubts(on("2025-05-05")))
                .isEqualTo(
                        flagged
                                ? List.of(new EquipmentDoubt.TesterCertificateExpired(
                                        "A. Vale", Optional.of(day("2025-05-04"))))
                                : List.of());
        assertThat(
                        qualification == Qualification.OTHER_TECHNICIAN && type != Type.MICROPROCESSOR
                                ? List.of()
                                : equipment.doubts(on("2025-05-04")))
                .as("its last day counts")
                .isEmpty();
    }

    @Test
    void aTechnicianIsResponsibleToSomebodyAlsoOnAMicroprocessorAudiometer() {
        Audiometer unit = calibrated(check("2025-05-05", Verdict.PASSED));
        Equipment equipment = new Equipment(
                true,
                List.of(unit),
                List.of(headset(1)),
                List.of(room(30)),
                List.of(new Tester("A. Vale", Qualification.COMPETENT_TECHNICIAN, List.of(), false)));
        assertThat(equipment.doubts(on("2025-05-05")))
                .containsExactly(new EquipmentDoubt.TesterWithoutSupervisor("A. Vale"));
    }

    @Test
    void whatIsNotOnRecordIsNamed() {
        Equipment equipment = equipment(calibrated(check("2025-05-05", Verdict.PASSED)));
        assertThat(equipment.doubts(new TestSetting(day("2025-05-05"), "U-9", "H-1", "", "A. Vale")))
                .containsExactly(new EquipmentDoubt.InstrumentNotRegistered("U-9"));
        assertThat(equipment.doubts(new TestSetting(day("2025-05-05"), "U-1", "", "Attic", "B. Hale")))
                .containsExactly(
                        new EquipmentDoubt.TransducerNotRegistered(""),
                        new EquipmentDoubt.RoomNotOnRecord("Attic", Why.NO_SUCH_ROOM),
                        new EquipmentDoubt.TesterNotOnRecord("B. Hale"));
    }

    @Test
    void nothingIsAskedBeforeTheRecordsBeginOrWithoutAny() {
        Audiometer unit = calibrated();
        assertThat(doubts(unit, "2025-03-02")).isEmpty();
        assertThat(equipment(unit).doubts(new TestSetting(day("2025-03-02"), "U-9", "", "", "")))
                .isEmpty();
        assertThat(Equipment.NONE.doubts(on("2025-05-05"))).isEmpty();
        Equipment travellingOnly = new Equipment(false, List.of(unit), List.of(), List.of(), List.of());
        assertThat(travellingOnly.doubts(new TestSetting(day("2025-05-05"), "U-9", "", "", "")))
                .isEmpty();
        assertThat(travellingOnly.doubts(on("2025-05-05"))).isNotEmpty();
    }
}
