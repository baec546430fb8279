package org.thresholdregister.reports;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.SmallGroups;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.summary.YearSummary;
import org.thresholdregister.core.wording.SummaryWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.review.DeterminationStore;

/**
 * The year in counts, within the sites that the signed-in user may see; totals are of these sites. A plant manager is
 * not told of small groups, nor of what would give them away: see {@link SmallGroups}.
 */
@Service
@Transactional(readOnly = true)
@PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER + " or " + Roles.HAS_PLANT_MANAGER)
public class SummaryService {

    /** How many earlier years a year is compared with. */
    public static final int YEARS_BEFORE = 4;

    private final DeterminationStore determinations;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    SummaryService(DeterminationStore determinations, AuditTrail auditTrail, CurrentUser currentUser, Clock clock) {
        this.determinations = determinations;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** The years that have tests, latest first. */
    public List<Integer> years() {
        return determinations.years(currentUser.scope());
    }

    /** The counts of a year by site and department, with the totals of the years before it. */
    public YearReport report(int year) {
        List<SummaryRow> rows = rows(year - YEARS_BEFORE, year);
        return new YearReport(
                year,
                rows.stream().filter(row -> row.year() == year).toList(),
                rows.stream()
                        .filter(row -> row.year() < year && row.group().equals(Group.EVERYBODY))
                        .sorted(Comparator.comparingInt(SummaryRow::year).reversed())
                        .toList(),
                onlySites());
    }

    /** What {@link #report} tells, as a workbook; that it was taken out is noted on the audit trail. */
    @Transactional
    public byte[] workbook(int year) {
        YearReport report = report(year);
        auditTrail.record(ReportAction.SUMMARY_DOWNLOADED, "summary", Integer.toString(year), "");
        List<String> notes = new ArrayList<>();
        notes.add(SummaryWords.sentence(year, report.rows()));
        notes.add("As the record stands on " + Words.day(LocalDate.now(clock)) + ".");
        report.onlySites().map(SummaryWords::onlySites).ifPresent(notes::add);
        return SummaryWorkbook.of(
                Stream.concat(report.rows().stream(), report.yearsBefore().stream())
                        .toList(),
                notes);
    }

    private List<SummaryRow> rows(int firstYear, int lastYear) {
        YearSummary summary = new YearSummary();
        determinations.forEachWorker(currentUser.scope(), firstYear, lastYear, summary::add);
        return currentUser.role() == Role.PLANT_MANAGER ? SmallGroups.hide(summary.rows()) : summary.rows();
    }

    private Optional<Set<String>> onlySites() {
        return switch (currentUser.scope()) {
            case SiteScope.AllSites() -> Optional.empty();
            case SiteScope.OnlySites(Set<String> names) -> Optional.of(names);
        };
    }
}
