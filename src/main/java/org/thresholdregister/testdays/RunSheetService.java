package org.thresholdregister.testdays;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.pdf.PaperSize;
import org.thresholdregister.platform.pdf.PdfRenderer;
import org.thresholdregister.platform.pdf.PrintedDocument;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/**
 * The sheet that a test day is run by. It says who comes for what and shows no threshold; since a retest tells of a
 * shift, it is marked as a health record.
 */
@Service
@Transactional
public class RunSheetService {

    /** A line of the sheet. */
    public record Line(
            String time, String name, String workerId, String department, String shift, String what, String quiet) {}

    private final TestDayService days;
    private final PdfRenderer renderer;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    RunSheetService(
            TestDayService days, PdfRenderer renderer, AuditTrail auditTrail, CurrentUser currentUser, Clock clock) {
        this.days = days;
        this.renderer = renderer;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** The run sheet of a day as a PDF; empty for a day that the user may not see. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public Optional<byte[]> pdf(long key) {
        return days.find(key).map(counts -> {
            List<Booking> bookings = days.bookings(key).stream()
                    .filter(booking -> booking.state().holdsItsTime())
                    .toList();
            auditTrail.record(TestDayAction.RUN_SHEET_OPENED, "test day", Long.toString(key), "");
            return renderer.render(document(counts, bookings));
        });
    }

    private PrintedDocument document(TestDayCounts counts, List<Booking> bookings) {
        TestDay day = counts.day();
        String heading = "Run sheet, " + SchedulingWords.day(day.date());
        boolean unconfirmed = bookings.stream().anyMatch(booking -> booking.state() == BookingState.PROPOSED);
        Map<String, Object> values = Map.of(
                "heading",
                heading,
                "where",
                (day.site().isEmpty() ? "" : day.site() + ", ") + day.place(),
                "people",
                SchedulingWords.people(day.date(), counts.people(), counts.retests()) + ".",
                "unconfirmed",
                unconfirmed ? "Some of these times are not confirmed yet." : "",
                "lines",
                bookings.stream().map(RunSheetService::line).toList(),
                "quiet",
                bookings.stream()
                        .map(Booking::quietHours)
                        .distinct()
                        .map(SchedulingWords::quietForAll)
                        .toList());
        String foot = "Health record. " + (day.site().isEmpty() ? "" : day.site() + ". ") + "Printed "
                + Words.day(LocalDate.now(clock)) + " by " + currentUser.get().displayName() + ".";
        return new PrintedDocument("org/thresholdregister/testdays/run-sheet", values, heading, foot, clock.instant())
                .on(PaperSize.LETTER_ACROSS);
    }

    private static Line line(Booking booking) {
        return new Line(
                SchedulingWords.time(booking.starts()),
                booking.name(),
                booking.workerId(),
                booking.department(),
                booking.shift(),
                Words.capitalised(SchedulingWords.occasion(booking.occasion())),
                SchedulingWords.quiet(booking.quiet(), booking.quietHours()));
    }
}
