package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.DifferenceWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.review.CompareService;
import org.thresholdregister.review.RuleComparison;
import org.thresholdregister.review.ShiftReviewService;
import org.thresholdregister.review.Way;
import org.thresholdregister.roster.WorkerService;

/** What a year looks like under two sets of rules: the counts side by side, who differs, and why. */
@Route(CompareView.ROUTE)
@PageTitle("Compare rules · Threshold Register")
@Menu(title = "Compare rules", order = 45)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class CompareView extends Div implements HealthRecordPage, BeforeEnterObserver {

    static final String ROUTE = "compare";

    private static final String YEAR = "year";
    private static final String SITE = "site";
    private static final String ONE = "one";
    private static final String OTHER = "other";
    private static final Way SECOND_AT_FIRST = new Way(RuleSets.OSHA, AgeCorrection.OFF, false);

    private final transient CompareService comparing;
    private final int thisYear;
    private final ComboBox<Integer> year;
    private final ComboBox<String> site;
    private final WayFields one = new WayFields("First way");
    private final WayFields other = new WayFields("Second way");
    private final Button compare = new Button("Compare", click -> compare());
    private final Div result = new Div();

    CompareView(CompareService comparing, ShiftReviewService shifts, WorkerService workers, Clock clock) {
        this.comparing = comparing;
        thisYear = LocalDate.now(clock).getYear();
        List<Integer> years = new ArrayList<>(shifts.years());
        if (!years.contains(thisYear)) {
            years.addFirst(thisYear);
        }
        year = new ComboBox<>("Year", years);
        site = new ComboBox<>("Site", workers.sites());
        site.setItemLabelGenerator(Place::name);
        site.setPlaceholder("all");
        site.setClearButtonVisible(true);
        compare.addThemeVariants(ButtonVariant.PRIMARY);
        compare.setDisableOnClick(true);
        var what = new Div(year, site, compare);
        what.addClassName("tr-compare-what");
        var form = new Div(one, other, what);
        form.addClassNames("tr-card", "tr-compare", "tr-screen-only");
        var caution = new Paragraph("The record stays as it is: this judges it twice and stores nothing. Counts of"
                + " different rule sets are never added up. " + Words.CAUTION);
        caution.addClassName("tr-caution");
        add(new H1("Compare rules"), caution, form, result);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        FilterParameters parameters = FilterParameters.of(event.getLocation());
        int ofYear = parameters.year(YEAR).orElse(thisYear);
        Optional<String> ofSite = parameters.text(SITE);
        Way first = way(parameters, ONE).orElse(Way.USUAL);
        Way second = way(parameters, OTHER).orElse(SECOND_AT_FIRST);
        year.setValue(ofYear);
        site.setValue(ofSite.orElse(null));
        one.setValue(first);
        other.setValue(second);
        show(comparing.compare(ofYear, ofSite, first, second));
        compare.setEnabled(true);
    }

    private static Optional<Way> way(FilterParameters parameters, String name) {
        return parameters
                .text(name)
                .map(word -> Way.of(word).orElseThrow(() -> new NotFoundException("no such way of judging")));
    }

    private void compare() {
        FilterParameters address = FilterParameters.NONE
                .with(YEAR, Optional.of(Integer.toString(year.getOptionalValue().orElse(thisYear))))
                .with(SITE, site.getOptionalValue())
                .with(ONE, Optional.of(one.getValue().word()))
                .with(OTHER, Optional.of(other.getValue().word()));
        getUI().ifPresent(ui -> ui.navigate(ROUTE, address.toQueryParameters()));
    }

    private void show(RuleComparison comparison) {
        result.removeAll();
        result.add(new LeadSentence(lead(comparison)));
        if (comparison.judged() > 0) {
            result.add(counts(comparison));
        }
        if (comparison.differing() == 0) {
            result.add(new EmptyHint(whyNothingDiffers(comparison), whatToChooseInstead(comparison)));
            return;
        }
        result.add(new H2("Who differs, and why"), new Paragraph(reasons(comparison.reasons())));
        if (comparison.differing() > comparison.rows().size()) {
            result.add(new Paragraph("The first " + comparison.rows().size() + " of " + comparison.differing()
                    + " are listed; choose a site to see fewer."));
        }
        result.add(differences(comparison));
    }

    private static String whyNothingDiffers(RuleComparison comparison) {
        if (comparison.judged() == 0) {
            return "No test of " + comparison.year() + " is on record"
                    + Place.phrase(comparison.site(), Optional.empty()) + ".";
        }
        return comparison.one().equals(comparison.other())
                ? "Both ways are the same."
                : "Both ways answer every test of " + comparison.year() + " alike.";
    }

    private static String whatToChooseInstead(RuleComparison comparison) {
        return comparison.judged() == 0
                ? "Choose another year or another site."
                : "Choose another rule set, another year or another site.";
    }

    private static String lead(RuleComparison comparison) {
        String tested = " tested in " + comparison.year() + Place.phrase(comparison.site(), Optional.empty());
        if (comparison.judged() == 0) {
            return "No worker was" + tested + ".";
        }
        String among = " of the " + Counted.of(comparison.judged(), "worker", "workers") + tested;
        return comparison.differing() == 0
                ? "None" + among + " is judged differently."
                : Counted.of(comparison.workers(), "worker", "workers") + among + " "
                        + (comparison.workers() == 1 ? "is" : "are") + " judged differently, on "
                        + Counted.of(comparison.differing(), "test of an ear", "tests of an ear") + ".";
    }

    private static String reasons(Map<Difference.Reason, Integer> reasons) {
        List<String> parts = new ArrayList<>();
        for (Difference.Reason reason : Difference.Reason.values()) {
            Integer count = reasons.get(reason);
            if (count != null) {
                parts.add(DifferenceWording.reason(reason) + " (" + count + ")");
            }
        }
        return "Reasons: " + Words.listed(parts) + ".";
    }

    private static Component counts(RuleComparison comparison) {
        return new ListTable<>(
                "The year " + comparison.year() + ", counted in both ways",
                List.<ListColumn<Measure, ?>>of(
                        ListColumn.unordered("Counted", 14, measure -> ListCell.text(measure.title())),
                        ListColumn.unordered(
                                first(comparison),
                                10,
                                measure -> count(
                                        comparison.one(),
                                        measure,
                                        comparison.countsOf(measure).one())),
                        ListColumn.unordered(
                                second(comparison),
                                10,
                                measure -> count(
                                        comparison.other(),
                                        measure,
                                        comparison.countsOf(measure).other()))),
                List.of(Measure.values()),
                measure -> {});
    }

    private static ListCell count(Way way, Measure measure, int count) {
        return measure == Measure.RECORDABLE_CASES && !way.keepsLog()
                ? ListCell.text("keeps no log")
                : ListCell.figures(Integer.toString(count));
    }

    private static String first(RuleComparison comparison) {
        return "First: " + comparison.one().label();
    }

    private static String second(RuleComparison comparison) {
        return "Second: " + comparison.other().label();
    }

    private static Component differences(RuleComparison comparison) {
        var wording = new DifferenceWording(
                Words.capitalised(comparison.one().label()),
                Words.capitalised(comparison.other().label()));
        var table = new ListTable<>(
                "Tests that are answered differently, by worker and date",
                List.<ListColumn<RuleComparison.Row, ?>>of(
                        ListColumn.unordered(
                                "Worker",
                                11,
                                row -> ListCell.link(
                                                row.familyName() + ", " + row.givenName(), Paths.worker(row.workerId()))
                                        .withNote(row.workerId())),
                        ListColumn.unordered(
                                "Test",
                                9,
                                row -> ListCell.text(Words.capitalised(Words.purpose(
                                                row.difference().test().purpose())))
                                        .withNote(Words.day(
                                                row.difference().test().date()))),
                        ListColumn.unordered(
                                "Ear",
                                6,
                                row -> ListCell.text(Words.ear(row.difference().ear()))),
                        ListColumn.unordered(
                                first(comparison),
                                10,
                                row -> ListCell.text(
                                        DifferenceWording.found(row.difference().one()))),
                        ListColumn.unordered(
                                second(comparison),
                                10,
                                row -> ListCell.text(
                                        DifferenceWording.found(row.difference().other()))),
                        ListColumn.unordered(
                                "Why",
                                26,
                                row -> ListCell.text(Words.capitalised(DifferenceWording.reason(
                                                row.difference().reason())))
                                        .withNote(wording.why(row.difference())))),
                comparison.rows(),
                row -> {});
        table.addClassName("tr-differences");
        return table;
    }
}
