package org.thresholdregister.instruments;

import java.util.List;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.core.calibration.Equipment;
import org.thresholdregister.core.calibration.Headset;
import org.thresholdregister.core.calibration.TestRoom;
import org.thresholdregister.core.calibration.Tester;

/** What a site has on record, for whoever judges its tests. The caller has checked the role and holds the transaction. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class EquipmentStore {

    private final EntryBook book;

    EquipmentStore(EntryBook book) {
        this.book = book;
    }

    /** What is used at a site, with what travels between the sites. */
    public Equipment at(String site) {
        List<Entry<Facts.Unit>> units = book.standing(StoredAudiometer.class).stream()
                .filter(unit -> isUsedAt(site, unit.facts().site()))
                .toList();
        if (units.isEmpty()) {
            return Equipment.NONE;
        }
        boolean own = units.stream().anyMatch(unit -> unit.facts().site().equals(site));
        return new Equipment(own, audiometers(units), headsets(site), rooms(site), testers(site));
    }

    private static boolean isUsedAt(String site, String at) {
        return at.isEmpty() || at.equals(site);
    }

    List<Audiometer> audiometers(List<Entry<Facts.Unit>> units) {
        List<Entry<Facts.Calibration>> calibrations = book.standing(StoredCalibration.class);
        List<CheckLine> checks = book.checks();
        Function<Entry<Facts.Unit>, Audiometer> toAudiometer = unit -> new Audiometer(
                unit.key(),
                unit.facts().identity(),
                unit.facts().type(),
                unit.facts().from(),
                unit.facts().to(),
                calibrations.stream()
                        .map(Entry::facts)
                        .filter(calibration -> calibration.unit() == unit.key())
                        .map(facts ->
                                new Audiometer.Calibration(facts.kind(), facts.day(), facts.asFound(), facts.asLeft()))
                        .toList(),
                checks.stream()
                        .filter(check -> check.unit() == unit.key())
                        .map(check -> new Audiometer.Check(check.day(), check.verdict()))
                        .toList());
        return units.stream().map(toAudiometer).toList();
    }

    private List<Headset> headsets(String site) {
        List<Entry<Facts.CalibratedTo>> units = book.standing(StoredHeadsetUnit.class);
        return book.standing(StoredHeadset.class).stream()
                .filter(headset -> isUsedAt(site, headset.facts().site()))
                .map(headset -> new Headset(
                        headset.facts().identity(),
                        headset.facts().type(),
                        units.stream()
                                .map(Entry::facts)
                                .filter(unit -> unit.headset() == headset.key())
                                .map(unit -> new Headset.CalibratedTo(unit.unit(), unit.from(), unit.to()))
                                .toList()))
                .toList();
    }

    private List<TestRoom> rooms(String site) {
        List<Entry<Facts.Measurement>> measurements = book.standing(StoredRoomMeasurement.class);
        return book.standing(StoredRoom.class).stream()
                .filter(room -> isUsedAt(site, room.facts().site()))
                .map(room -> new TestRoom(
                        room.facts().name(),
                        room.facts().from(),
                        room.facts().to(),
                        measurements.stream()
                                .map(Entry::facts)
                                .filter(measured -> measured.room() == room.key())
                                .map(measured -> new TestRoom.Measurement(measured.day(), measured.levels()))
                                .toList()))
                .toList();
    }

    private List<Tester> testers(String site) {
        List<Entry<Facts.Certificate>> certificates = book.standing(StoredCertificate.class);
        return book.standing(StoredTester.class).stream()
                .filter(person -> isUsedAt(site, person.facts().site()))
                .map(person -> tester(person, certificates))
                .toList();
    }

    static Tester tester(Entry<Facts.Person> person, List<Entry<Facts.Certificate>> certificates) {
        return new Tester(
                person.facts().name(),
                person.facts().qualification(),
                certificates.stream()
                        .map(Entry::facts)
                        .filter(certificate -> certificate.tester() == person.key())
                        .map(certificate -> new Tester.Certificate(certificate.issued(), certificate.expires()))
                        .toList(),
                !person.facts().supervisor().isBlank());
    }
}
