package org.thresholdregister.instruments;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.instruments.EntryResult.Objection;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SiteScope;

/** The audiometers, earphones, rooms and testers of the user's sites: read them, enter and correct them. */
@Service
@Transactional
public class InstrumentService {

    /** The longest text of one line, in characters; names and serial numbers have at most {@link #LONGEST_NAME}. */
    public static final int LONGEST_TEXT = 200;

    public static final int LONGEST_NAME = 100;

    private final EntryBook book;
    private final EquipmentStore equipment;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    InstrumentService(
            EntryBook book, EquipmentStore equipment, AuditTrail auditTrail, CurrentUser currentUser, Clock clock) {
        this.book = book;
        this.equipment = equipment;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** What may be seen: that of the user's sites, and what travels between sites. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public Holdings holdings() {
        List<Entry<Facts.Unit>> units = seen(StoredAudiometer.class, Facts.Unit::site);
        List<Entry<Facts.Earphones>> headsets = seen(StoredHeadset.class, Facts.Earphones::site);
        List<Entry<Facts.Room>> rooms = seen(StoredRoom.class, Facts.Room::site);
        List<Entry<Facts.Person>> testers = seen(StoredTester.class, Facts.Person::site);
        return new Holdings(
                units,
                equipment.audiometers(units),
                headsets,
                of(headsets, StoredHeadsetUnit.class, Facts.CalibratedTo::headset),
                of(units, StoredCalibration.class, Facts.Calibration::unit),
                of(units, StoredCheck.class, Facts.Check::unit),
                rooms,
                of(rooms, StoredRoomMeasurement.class, Facts.Measurement::room),
                testers,
                of(testers, StoredCertificate.class, Facts.Certificate::tester));
    }

    private <F extends Facts> List<Entry<F>> seen(Class<? extends StoredEntry<F>> type, Function<F, String> site) {
        SiteScope scope = currentUser.scope();
        return book.standing(type).stream()
                .filter(entry -> site.apply(entry.facts()).isEmpty() || scope.includes(site.apply(entry.facts())))
                .toList();
    }

    private <F extends Facts> List<Entry<F>> of(
            List<? extends Entry<?>> owners, Class<? extends StoredEntry<F>> type, Function<F, Long> owner) {
        List<Long> keys = owners.stream().map(Entry::key).toList();
        return book.standing(type).stream()
                .filter(entry -> keys.contains(owner.apply(entry.facts())))
                .toList();
    }

    /** Enters facts, corrects those of an earlier entry of the same kind, or takes it back. */
    @PreAuthorize(Roles.HAS_NURSE)
    public EntryResult enter(Facts facts, Change change) {
        Optional<Objection> objection = objectionTo(facts, change);
        if (objection.isPresent()) {
            return new EntryResult.Refused(objection.get());
        }
        String by = currentUser.username();
        Instant at = clock.instant();
        long key = book.add(
                switch (facts) {
                    case Facts.Unit unit -> new StoredAudiometer(unit, change, by, at);
                    case Facts.Earphones headset -> new StoredHeadset(headset, change, by, at);
                    case Facts.CalibratedTo unit -> new StoredHeadsetUnit(unit, change, by, at);
                    case Facts.Calibration calibration -> new StoredCalibration(calibration, change, by, at);
                    case Facts.Check check -> new StoredCheck(check, change, by, at);
                    case Facts.Room room -> new StoredRoom(room, change, by, at);
                    case Facts.Measurement measurement -> new StoredRoomMeasurement(measurement, change, by, at);
                    case Facts.Person person -> new StoredTester(person, change, by, at);
                    case Facts.Certificate certificate -> new StoredCertificate(certificate, change, by, at);
                });
        auditTrail.record(
                change.withdraws()
                        ? InstrumentAction.EQUIPMENT_WITHDRAWN
                        : change.corrects().isPresent()
                                ? InstrumentAction.EQUIPMENT_CORRECTED
                                : InstrumentAction.EQUIPMENT_ENTERED,
                kind(facts),
                Long.toString(key),
                "");
        return new EntryResult.Entered(key);
    }

    private static String kind(Facts facts) {
        return switch (facts) {
            case Facts.Unit ignored -> "audiometer";
            case Facts.Earphones ignored -> "headset";
            case Facts.CalibratedTo ignored -> "headset unit";
            case Facts.Calibration ignored -> "calibration";
            case Facts.Check ignored -> "functional check";
            case Facts.Room ignored -> "test room";
            case Facts.Measurement ignored -> "room measurement";
            case Facts.Person ignored -> "tester";
            case Facts.Certificate ignored -> "tester certificate";
        };
    }

    private Optional<Objection> objectionTo(Facts facts, Change change) {
        boolean changes = change.corrects().isPresent();
        if (changes && change.reason().isBlank()) {
            return Optional.of(Objection.REASON_MISSING);
        }
        if (change.reason().length() > Change.LONGEST_REASON) {
            return Optional.of(Objection.TEXT_TOO_LONG);
        }
        LocalDate today = LocalDate.now(clock);
        Holdings holdings = holdings();
        return switch (facts) {
            case Facts.Unit unit ->
                first(
                        corrected(holdings.units(), change),
                        site(unit.site()),
                        name(unit.identity(), unit.serialNumber()),
                        taken(book.standing(StoredAudiometer.class), Facts.Unit::identity, unit.identity(), change),
                        span(unit.from(), unit.to()));
            case Facts.Earphones headset ->
                first(
                        corrected(holdings.headsets(), change),
                        site(headset.site()),
                        name(headset.identity(), headset.earphone()),
                        taken(
                                book.standing(StoredHeadset.class),
                                Facts.Earphones::identity,
                                headset.identity(),
                                change));
            case Facts.CalibratedTo unit ->
                first(
                        corrected(holdings.headsetUnits(), change),
                        owner(holdings.headsets(), unit.headset()),
                        owner(holdings.units(), unit.unit()),
                        span(unit.from(), unit.to()));
            case Facts.Calibration calibration ->
                first(
                        corrected(holdings.calibrations(), change),
                        owner(holdings.units(), calibration.unit()),
                        text(calibration.by()),
                        length(calibration.earphone(), LONGEST_NAME),
                        past(calibration.day(), today));
            case Facts.Check check ->
                first(
                        corrected(holdings.checks(), change),
                        owner(holdings.units(), check.unit()),
                        check.headset().flatMap(headset -> owner(holdings.headsets(), headset)),
                        text(check.by()),
                        text(check.person()),
                        length(check.heard(), Change.LONGEST_REASON),
                        past(check.day(), today));
            case Facts.Room room ->
                first(
                        corrected(holdings.rooms(), change),
                        site(room.site()),
                        name(room.name(), ""),
                        taken(
                                ofSite(holdings.rooms(), Facts.Room::site, room.site()),
                                Facts.Room::name,
                                room.name(),
                                change),
                        span(room.from(), room.to()));
            case Facts.Measurement measurement ->
                first(
                        corrected(holdings.measurements(), change),
                        owner(holdings.rooms(), measurement.room()),
                        text(measurement.by()),
                        length(measurement.meter(), LONGEST_TEXT),
                        past(measurement.day(), today));
            case Facts.Person person ->
                first(
                        corrected(holdings.testers(), change),
                        site(person.site()),
                        text(person.name()),
                        length(person.supervisor(), LONGEST_TEXT),
                        taken(
                                ofSite(holdings.testers(), Facts.Person::site, person.site()),
                                Facts.Person::name,
                                person.name(),
                                change));
            case Facts.Certificate certificate ->
                first(
                        corrected(holdings.certificates(), change),
                        owner(holdings.testers(), certificate.tester()),
                        length(certificate.number(), LONGEST_NAME),
                        past(certificate.issued(), today),
                        span(certificate.issued(), certificate.expires()));
        };
    }

    @SafeVarargs
    private static Optional<Objection> first(Optional<Objection>... objections) {
        return Stream.of(objections).flatMap(Optional::stream).findFirst();
    }

    private static Optional<Objection> when(boolean stands, Objection objection) {
        return stands ? Optional.of(objection) : Optional.empty();
    }

    private static Optional<Objection> corrected(List<? extends Entry<?>> seen, Change change) {
        return change.corrects()
                .flatMap(key ->
                        when(seen.stream().noneMatch(entry -> entry.key() == key), Objection.NOT_THE_SAME_THING));
    }

    /** What travels is entered only by those who see every site. */
    private Optional<Objection> site(String site) {
        return when(!currentUser.scope().includes(site.isEmpty() ? null : site), Objection.NOT_ON_RECORD);
    }

    private static Optional<Objection> owner(List<? extends Entry<?>> seen, long key) {
        return when(seen.stream().noneMatch(entry -> entry.key() == key), Objection.NOT_ON_RECORD);
    }

    private static Optional<Objection> name(String name, String other) {
        return first(
                when(name.isBlank(), Objection.TEXT_MISSING), length(name, LONGEST_NAME), length(other, LONGEST_NAME));
    }

    private static Optional<Objection> text(String text) {
        return first(when(text.isBlank(), Objection.TEXT_MISSING), length(text, LONGEST_TEXT));
    }

    private static Optional<Objection> length(String text, int longest) {
        return when(text.length() > longest, Objection.TEXT_TOO_LONG);
    }

    private static <F extends Facts> List<Entry<F>> ofSite(
            List<Entry<F>> entries, Function<F, String> siteOf, String site) {
        return entries.stream()
                .filter(entry -> siteOf.apply(entry.facts()).equals(site))
                .toList();
    }

    private static <F extends Facts> Optional<Objection> taken(
            List<Entry<F>> entries, Function<F, String> nameOf, String name, Change change) {
        return when(
                !change.withdraws()
                        && entries.stream()
                                .filter(entry -> !Objects.equals(change.corrects(), Optional.of(entry.key())))
                                .anyMatch(entry ->
                                        nameOf.apply(entry.facts()).strip().equalsIgnoreCase(name.strip())),
                Objection.NAME_TAKEN);
    }

    private static Optional<Objection> past(LocalDate day, LocalDate today) {
        return when(day.isAfter(today), Objection.IN_THE_FUTURE);
    }

    private static Optional<Objection> span(LocalDate from, Optional<LocalDate> to) {
        return when(to.filter(last -> last.isBefore(from)).isPresent(), Objection.ENDS_BEFORE_IT_BEGINS);
    }
}
