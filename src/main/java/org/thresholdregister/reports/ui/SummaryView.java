package org.thresholdregister.reports.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Nav;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Location;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.QueryParameters;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.RouterLink;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryLine;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.wording.SummaryWords;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.reports.SummaryService;
import org.thresholdregister.reports.YearReport;

/** A year in counts by site and department; it shows no person. */
@Route(SummaryView.ROUTE)
@PageTitle("Summary · Threshold Register")
@Menu(title = "Summary", order = 40)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER, Roles.PLANT_MANAGER})
class SummaryView extends Div implements BeforeEnterObserver {

    static final String ROUTE = "summary";
    private static final String YEAR = "year";
    private static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final transient SummaryService summaries;
    private final transient CurrentUser currentUser;

    SummaryView(SummaryService summaries, CurrentUser currentUser) {
        this.summaries = summaries;
        this.currentUser = currentUser;
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        removeAll();
        List<Integer> years = summaries.years();
        if (years.isEmpty()) {
            add(new H1("Summary"), nothingYet());
        } else {
            int year = yearIn(event.getLocation()).filter(years::contains).orElse(years.getFirst());
            show(summaries.report(year), years);
        }
    }

    private static Optional<Integer> yearIn(Location location) {
        try {
            return location.getQueryParameters().getSingleParameter(YEAR).map(Integer::valueOf);
        } catch (NumberFormatException noYear) {
            // An address that names no year shows the latest.
            return Optional.empty();
        }
    }

    private EmptyHint nothingYet() {
        String why = "No test of the sites in view is on record yet.";
        return currentUser.role() == Role.PLANT_MANAGER
                ? new EmptyHint(why, "Once the nurse has imported the tests, the year's counts stand here.")
                : new EmptyHint(
                        why,
                        "Once tests are imported, the year's counts stand here.",
                        new Anchor("import", "Import files"));
    }

    private void show(YearReport report, List<Integer> years) {
        int year = report.year();
        boolean seesPeople = currentUser.role() != Role.PLANT_MANAGER;
        add(new H1("Summary of " + year), new SummaryLead(year, report.rows(), seesPeople));
        report.onlySites().map(SummaryWords::onlySites).map(Paragraph::new).ifPresent(this::add);
        var tools = new Div(
                yearLinks(years, year),
                Downloads.link(
                        "Download as a workbook",
                        "summary-" + year + ".xlsx",
                        WORKBOOK,
                        out -> out.write(summaries.workbook(year))));
        tools.addClassName("tr-summary-tools");
        add(tools, SummaryTable.ofGroups(year, SummaryLine.of(report.rows())));
        List<SummaryRow> totals = new ArrayList<>(report.rows().stream()
                .filter(row -> row.group().equals(Group.EVERYBODY))
                .toList());
        totals.addAll(report.yearsBefore());
        if (!report.yearsBefore().isEmpty()) {
            add(new H2("Beside the years before"), SummaryTable.ofYears(SummaryLine.of(totals)));
        }
        if (hidesSomething(report.rows()) || hidesSomething(totals)) {
            add(new Paragraph(SummaryWords.WHAT_HIDDEN_MEANS));
        }
        add(new H2("What the columns count"), meanings());
    }

    private static Nav yearLinks(List<Integer> years, int chosen) {
        var nav = new Nav(new Span("Year"));
        nav.getElement().setAttribute("aria-label", "Year");
        nav.addClassName("tr-years");
        for (int year : years) {
            var link = new RouterLink(Integer.toString(year), SummaryView.class);
            link.setQueryParameters(QueryParameters.of(YEAR, Integer.toString(year)));
            if (year == chosen) {
                link.getElement().setAttribute("aria-current", "page");
            }
            nav.add(link);
        }
        return nav;
    }

    private static boolean hidesSomething(List<SummaryRow> rows) {
        return rows.stream().anyMatch(row -> row.count() instanceof Count.Hidden);
    }

    private static DescriptionList meanings() {
        var list = new DescriptionList();
        list.addClassName("tr-meanings");
        for (Measure measure : Measure.values()) {
            list.add(new DescriptionList.Term(measure.title()), new DescriptionList.Description(measure.meaning()));
        }
        return list;
    }
}
