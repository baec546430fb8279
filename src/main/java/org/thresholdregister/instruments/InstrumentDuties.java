package org.thresholdregister.instruments;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.core.calibration.DailyCheck;
import org.thresholdregister.core.calibration.Tester;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.wording.EquipmentWords;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.SiteScope;

/** Calibrations, room measurements and certificates that run out, and what a failed functional check calls for. */
@Component
class InstrumentDuties implements DutySource {

    private static final String ADDRESS = "instruments";
    private static final Citation ROOM_YEARLY = new Citation("rooms are measured yearly (common practice)");

    private final EntryBook book;
    private final EquipmentStore equipment;

    InstrumentDuties(EntryBook book, EquipmentStore equipment) {
        this.book = book;
        this.equipment = equipment;
    }

    @Override
    public List<OpenDuty> open(SiteScope scope, LocalDate today, LocalDate until) {
        List<OpenDuty> duties = new ArrayList<>();
        List<Entry<Facts.Unit>> units = book.standing(StoredAudiometer.class).stream()
                .filter(unit -> isSeen(scope, unit.facts().site()))
                .toList();
        List<Audiometer> audiometers = equipment.audiometers(units);
        for (int i = 0; i < units.size(); i++) {
            Audiometer unit = audiometers.get(i);
            if (unit.isInUse(today)) {
                addUnit(unit, units.get(i).facts().site(), today, duties);
            }
        }
        addRooms(scope, today, duties);
        addTesters(scope, duties);
        return duties.stream().filter(duty -> !duty.due().isAfter(until)).toList();
    }

    private static boolean isSeen(SiteScope scope, String site) {
        return site.isEmpty() || scope.includes(site);
    }

    private static void addUnit(Audiometer unit, String site, LocalDate today, List<OpenDuty> duties) {
        for (Audiometer.CalibrationKind kind : Audiometer.CalibrationKind.values()) {
            duties.add(duty(
                    EquipmentWords.calibration(kind),
                    unit.identity(),
                    site,
                    unit.inTimeUntil(kind, today).orElse(unit.from()),
                    EquipmentWords.basis(kind)));
        }
        unit.openFailure(today)
                .ifPresent(failed -> duties.add(duty(
                        EquipmentWords.calledFor(failed.verdict()),
                        unit.identity(),
                        site,
                        failed.day(),
                        DailyCheck.SOURCE)));
    }

    private void addRooms(SiteScope scope, LocalDate today, List<OpenDuty> duties) {
        List<Entry<Facts.Measurement>> measurements = book.standing(StoredRoomMeasurement.class);
        for (Entry<Facts.Room> room : book.standing(StoredRoom.class)) {
            boolean used = !room.facts().from().isAfter(today)
                    && room.facts().to().filter(last -> last.isBefore(today)).isEmpty();
            if (used && isSeen(scope, room.facts().site())) {
                Optional<LocalDate> measured = measurements.stream()
                        .map(Entry::facts)
                        .filter(each -> each.room() == room.key())
                        .map(Facts.Measurement::day)
                        .max(Comparator.naturalOrder());
                duties.add(duty(
                        "background levels of a test room",
                        room.facts().name(),
                        room.facts().site(),
                        measured.map(day -> day.plusYears(1))
                                .orElse(room.facts().from()),
                        ROOM_YEARLY));
            }
        }
    }

    private void addTesters(SiteScope scope, List<OpenDuty> duties) {
        List<Entry<Facts.Certificate>> certificates = book.standing(StoredCertificate.class);
        for (Entry<Facts.Person> person : book.standing(StoredTester.class)) {
            Tester tester = EquipmentStore.tester(person, certificates);
            if (isSeen(scope, person.facts().site())) {
                tester.certifiedUntil()
                        .ifPresent(last -> duties.add(duty(
                                "tester's certificate",
                                tester.name(),
                                person.facts().site(),
                                last,
                                Tester.SOURCE)));
            }
        }
    }

    private static OpenDuty duty(String kind, String name, String site, LocalDate due, Citation basis) {
        return new OpenDuty(kind, new OpenDuty.Subject.OfThing(name), site, due, basis, ADDRESS);
    }
}
