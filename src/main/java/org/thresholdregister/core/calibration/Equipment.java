package org.thresholdregister.core.calibration;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.DailyCheck.Verdict;
import org.thresholdregister.core.calibration.EquipmentDoubt.RoomNotOnRecord.Why;
import org.thresholdregister.core.regulation.Answer;

/**
 * What a site has on record of its equipment, rooms and testers. Names are compared without regard to case.
 *
 * <p>Nothing is asked of a test where the site has no audiometer on record, nor of one made before its audiometer's
 * records begin: their equipment was looked after elsewhere. A test that names no room was made in the site's only one,
 * where it has one in use on that day.
 *
 * @param ownInstruments whether the site has an audiometer of its own on record, beside those that travel
 */
public record Equipment(
        boolean ownInstruments,
        List<Audiometer> audiometers,
        List<Headset> headsets,
        List<TestRoom> rooms,
        List<Tester> testers) {

    /** A site that keeps no such record. */
    public static final Equipment NONE = new Equipment(false, List.of(), List.of(), List.of(), List.of());

    /** What was not in order when a test was made. */
    public List<EquipmentDoubt> doubts(TestSetting test) {
        Optional<Audiometer> unit = named(audiometers, Audiometer::identity, test.instrument());
        if (unit.isEmpty()) {
            return ownInstruments
                            && audiometers.stream().anyMatch(any -> !test.day().isBefore(any.from()))
                    ? List.of(new EquipmentDoubt.InstrumentNotRegistered(test.instrument()))
                    : List.of();
        }
        if (test.day().isBefore(unit.get().from())) {
            return List.of();
        }
        List<EquipmentDoubt> doubts = new ArrayList<>();
        ofUnit(unit.get(), test.day(), doubts);
        ofTransducer(unit.get(), test, doubts);
        ofRoom(test, doubts);
        ofTester(unit.get(), test, doubts);
        return List.copyOf(doubts);
    }

    private static void ofUnit(Audiometer unit, LocalDate day, List<EquipmentDoubt> doubts) {
        String name = unit.identity();
        for (CalibrationKind kind : CalibrationKind.values()) {
            Optional<LocalDate> until = unit.inTimeUntil(kind, day);
            if (until.isEmpty() || day.isAfter(until.get())) {
                doubts.add(new EquipmentDoubt.CalibrationOutOfDate(name, kind, until));
            }
        }
        Optional<Audiometer.Check> failure = unit.openFailure(day);
        if (failure.isPresent()) {
            doubts.add(new EquipmentDoubt.CheckFailed(
                    name, failure.get().day(), failure.get().verdict()));
            return;
        }
        Optional<Verdict> today = unit.checkOf(day);
        if (today.isEmpty() || today.get() == Verdict.INCOMPLETE) {
            doubts.add(new EquipmentDoubt.CheckMissing(name, today.isPresent()));
        }
        unit.failedNext(day)
                .map(failed -> new EquipmentDoubt.CheckFailedLater(name, failed.day(), lastPassed(unit, day)))
                .ifPresent(doubts::add);
        unit.foundOutsideNext(day)
                .map(found -> new EquipmentDoubt.CalibrationFoundOutside(name, found.day()))
                .ifPresent(doubts::add);
    }

    private static Optional<LocalDate> lastPassed(Audiometer unit, LocalDate day) {
        return unit.checks().stream()
                .filter(check ->
                        check.verdict() == Verdict.PASSED && !check.day().isAfter(day))
                .reduce((earlier, later) -> later)
                .map(Audiometer.Check::day);
    }

    private void ofTransducer(Audiometer unit, TestSetting test, List<EquipmentDoubt> doubts) {
        Optional<Headset> headset = named(headsets, Headset::identity, test.transducer());
        if (headset.isEmpty()) {
            doubts.add(new EquipmentDoubt.TransducerNotRegistered(test.transducer()));
            return;
        }
        Optional<Long> calibratedTo = headset.get().unitOn(test.day());
        if (calibratedTo.isEmpty() || calibratedTo.get() != unit.key()) {
            doubts.add(new EquipmentDoubt.TransducerOfAnotherUnit(
                    headset.get().identity(), unit.identity(), calibratedTo.flatMap(this::identityOf)));
        }
    }

    private Optional<String> identityOf(long key) {
        return audiometers.stream()
                .filter(unit -> unit.key() == key)
                .map(Audiometer::identity)
                .findFirst();
    }

    private void ofRoom(TestSetting test, List<EquipmentDoubt> doubts) {
        Optional<TestRoom> room = roomOf(test);
        if (room.isEmpty()) {
            doubts.add(new EquipmentDoubt.RoomNotOnRecord(test.room(), Why.NO_SUCH_ROOM));
            return;
        }
        String name = room.get().name();
        Optional<TestRoom.Measurement> measured = room.get().standing(test.day());
        if (measured.isEmpty()) {
            doubts.add(new EquipmentDoubt.RoomNotOnRecord(name, Why.NOT_MEASURED_YET));
            return;
        }
        RoomLimit.Finding finding = RoomLimit.OSHA.judge(measured.get().levels());
        if (finding.isKept() == Answer.NO) {
            doubts.add(new EquipmentDoubt.RoomTooLoud(name, measured.get().day(), finding.tooLoud()));
        } else if (finding.isKept() == Answer.UNDECIDED) {
            doubts.add(new EquipmentDoubt.RoomNotOnRecord(name, Why.BANDS_MISSING));
        }
    }

    private Optional<TestRoom> roomOf(TestSetting test) {
        if (!test.room().isBlank()) {
            return named(rooms, TestRoom::name, test.room());
        }
        List<TestRoom> inUse =
                rooms.stream().filter(room -> room.isInUse(test.day())).toList();
        return inUse.size() == 1 ? Optional.of(inUse.getFirst()) : Optional.empty();
    }

    private void ofTester(Audiometer unit, TestSetting test, List<EquipmentDoubt> doubts) {
        Optional<Tester> tester = named(testers, Tester::name, test.tester());
        if (tester.isEmpty()) {
            doubts.add(new EquipmentDoubt.TesterNotOnRecord(test.tester()));
            return;
        }
        if (tester.get().needsCertificate(unit.type()) && !tester.get().isCertified(test.day())) {
            doubts.add(new EquipmentDoubt.TesterCertificateExpired(
                    tester.get().name(), tester.get().ranOut(test.day())));
        }
        if (tester.get().lacksSupervisor()) {
            doubts.add(new EquipmentDoubt.TesterWithoutSupervisor(tester.get().name()));
        }
    }

    private static <T> Optional<T> named(List<T> things, Function<T, String> name, String wanted) {
        return things.stream()
                .filter(thing -> name.apply(thing).strip().equalsIgnoreCase(wanted.strip()))
                .findFirst();
    }
}
