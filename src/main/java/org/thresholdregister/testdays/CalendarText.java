package org.thresholdregister.testdays;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Parameter;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.component.Daylight;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.parameter.Value;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Name;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.RefreshInterval;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.review.FollowUpStore.DueOnDay;

/**
 * Writes a calendar, RFC 5545 and 7986. Test days stand in their site's time zone, whose changes are taken from the
 * Java platform; what falls due lies on its whole day.
 */
final class CalendarText {

    private static final Duration READ_AGAIN_AFTER = Duration.ofHours(4);

    private final String uid;
    private final Instant now;
    private final LocalDate first;
    private final LocalDate last;
    private final Map<String, VTimeZone> timeZones = new TreeMap<>();
    private final List<VEvent> events = new ArrayList<>();

    /** @param uid what tells the deadlines of this calendar from those of any other */
    CalendarText(String uid, Instant now, LocalDate first, LocalDate last) {
        this.uid = uid;
        this.now = now.truncatedTo(ChronoUnit.SECONDS);
        this.first = first;
        this.last = last;
    }

    /** @param named whom to name, with their times and not what they come for; nobody unless the site wants it */
    void add(StoredTestDay stored, ZoneId zone, int people, List<Booking> named) {
        TestDay day = stored.toTestDay();
        timeZones.computeIfAbsent(zone.getId(), id -> timeZone(zone));
        var event = new VEvent(
                day.date().atTime(day.hours().from()).atZone(zone),
                day.date().atTime(day.hours().to()).atZone(zone),
                "Hearing tests: " + Counted.of(people, "person", "people"));
        Instant changed = stored.changedAt().truncatedTo(ChronoUnit.SECONDS);
        event.replace(new DtStamp(changed));
        event.add(new LastModified(changed));
        event.add(new Uid(stored.uid()));
        event.add(new Sequence(stored.revision()));
        event.add(new Location((day.site().isEmpty() ? "" : day.site() + ", ") + day.place()));
        if (!named.isEmpty()) {
            event.add(new Description(named.stream()
                    .map(booking -> SchedulingWords.time(booking.starts()) + " " + booking.name())
                    .collect(Collectors.joining("\n"))));
        }
        if (day.cancelled()) {
            event.add(ImmutableStatus.VEVENT_CANCELLED);
        }
        events.add(event);
    }

    /** A deadline never moves to another day, so that it needs no later sequence. */
    void add(DueOnDay due) {
        var event = new VEvent(due.day(), SchedulingWords.due(due.kind(), due.number()));
        event.replace(new DtStamp(now));
        String name = uid + " " + due.kind().word() + " " + due.day();
        event.add(new Uid(
                UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString()));
        event.add(new Sequence(0));
        event.add(new LastModified(now));
        event.add(ImmutableTransp.TRANSPARENT);
        events.add(event);
    }

    private VTimeZone timeZone(ZoneId zone) {
        var timeZone = new VTimeZone();
        timeZone.add(new TzId(zone.getId()));
        Instant from = first.minusYears(1).atStartOfDay(zone).toInstant();
        Instant until = last.plusDays(1).atStartOfDay(zone).toInstant();
        ZoneOffset before = zone.getRules().getOffset(from);
        timeZone.add(observance(zone, from, LocalDateTime.ofInstant(from, before), before, before));
        ZoneOffsetTransition change = zone.getRules().nextTransition(from);
        while (change != null && change.getInstant().isBefore(until)) {
            timeZone.add(observance(
                    zone,
                    change.getInstant(),
                    change.getDateTimeBefore(),
                    change.getOffsetBefore(),
                    change.getOffsetAfter()));
            change = zone.getRules().nextTransition(change.getInstant());
        }
        return timeZone;
    }

    private static Observance observance(
            ZoneId zone, Instant at, LocalDateTime onset, ZoneOffset offsetBefore, ZoneOffset offsetAfter) {
        Observance observance = zone.getRules().isDaylightSavings(at) ? new Daylight() : new Standard();
        observance.add(new DtStart<>(onset));
        observance.add(new TzOffsetFrom(offsetBefore));
        observance.add(new TzOffsetTo(offsetAfter));
        return observance;
    }

    /** The whole calendar with CRLF line ends, folded. */
    @Override
    public String toString() {
        var calendar = new Calendar();
        calendar.add(new ProdId("-//Threshold Register//Test days//EN"));
        calendar.add(ImmutableVersion.VERSION_2_0);
        calendar.add(ImmutableCalScale.GREGORIAN);
        calendar.add(new Name(new ParameterList(), "Hearing tests"));
        calendar.add(new RefreshInterval(new ParameterList(List.<Parameter>of(Value.DURATION)), READ_AGAIN_AFTER));
        // A calendar of nothing at all is not allowed: it holds one component at least.
        if (events.isEmpty()) {
            timeZones.put(TestSiteFinder.UTC.getId(), timeZone(TestSiteFinder.UTC));
        }
        timeZones.values().forEach(calendar::add);
        events.forEach(calendar::add);
        var text = new StringWriter();
        try {
            new CalendarOutputter(true).output(calendar, text);
        } catch (IOException failure) {
            throw new UncheckedIOException("a calendar could not be written", failure);
        }
        return text.toString();
    }
}
