package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.protection.OwedRow;
import org.thresholdregister.protection.WearingColumn;
import org.thresholdregister.protection.WearingRow;
import org.thresholdregister.protection.WearingRow.State;
import org.thresholdregister.protection.WearingService;
import org.thresholdregister.roster.WorkerService;

/** Who has to wear protectors and how well those given out do, and what shifts leave to be refitted or trained. */
@Route(ProtectorsView.ROUTE)
@PageTitle("Protectors · Threshold Register")
@Menu(title = "Protectors", order = 72)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class ProtectorsView extends Div implements HealthRecordPage, BeforeEnterObserver {

    static final String ROUTE = "protectors";

    private static final String SITE = "site";
    private static final String DEPARTMENT = "department";
    private static final String STATE = "state";
    private static final String OWED = "owed-after-shifts";
    private static final int OWED_SHOWN = 100;

    private final transient WearingService wearing;
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(ROUTE, "Name or number", this::refresh);
    private final ListGrid<WearingRow, WearingColumn> list;
    private final Div empty = new Div();
    private final Div owed = new Div();
    private transient FilterParameters parameters = FilterParameters.NONE;

    ProtectorsView(WearingService wearing, WorkerService workers) {
        this.wearing = wearing;
        filters.choice(STATE, "State", List.of(State.values()), WearingWords::state)
                .names(SITE, "Site", workers.sites())
                .names(DEPARTMENT, "Department", workers.departments());
        list = new ListGrid<>(
                "Who has to wear protectors",
                WearingColumn.class,
                columns(),
                orders(),
                row -> WorkerProtectorsView.path(row.workerId()),
                row -> {});
        filters.add(list.order());
        owed.setId(OWED);
        var actions = new Div(
                new Anchor(CatalogueView.ROUTE, "Catalogue and method"),
                new Anchor(CalculatorView.ROUTE, "Protector calculator"));
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        add(new H1("Protectors"), lead, actions, filters, list, empty, owed);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        refresh();
    }

    private void refresh() {
        Optional<String> site = parameters.text(SITE);
        Optional<String> department = parameters.text(DEPARTMENT);
        Optional<State> state = parameters.choice(STATE, State.class);
        List<WearingRow> here = wearing.mustWear().stream()
                .filter(row -> site.filter(some -> !some.equals(row.site())).isEmpty())
                .filter(row -> department
                        .filter(some -> !some.equals(row.department()))
                        .isEmpty())
                .filter(row -> Fields.matches(filters.searched(), row.name() + " " + row.workerId()))
                .toList();
        List<WearingRow> shown = here.stream()
                .filter(row -> state.filter(some -> some != row.state()).isEmpty())
                .toList();
        List<OwedRow> owing = wearing.owedAfterShift().stream()
                .filter(row -> site.filter(some -> !some.equals(row.site())).isEmpty())
                .filter(row -> department
                        .filter(some -> !some.equals(row.department()))
                        .isEmpty())
                .toList();
        lead.removeAll();
        lead.add(sentence(here, owing));
        list.show(
                shown.size(),
                (order, offset, limit) -> shown.stream()
                        .sorted(order.column().comparator(order.descending()))
                        .skip(offset)
                        .limit(limit)
                        .toList());
        empty.removeAll();
        if (shown.isEmpty()) {
            empty.add(new EmptyHint(
                    here.isEmpty()
                            ? "Nobody in what you may see has to wear protectors."
                            : "Nobody who has to wear protectors fits this choice.",
                    "It is asked of those over the limit, and from the action level on of those with a shift or without"
                            + " a baseline six months after the first exposure.",
                    new Anchor("workers", "Go to the list of workers")));
        }
        showOwed(owing);
    }

    private LeadSentence sentence(List<WearingRow> rows, List<OwedRow> owing) {
        Map<State, Long> counts =
                rows.stream().collect(Collectors.groupingBy(WearingRow::state, Collectors.counting()));
        var sentence = new LeadSentence()
                .link(
                        Counted.of(rows.size(), "person has to wear protectors", "people have to wear protectors"),
                        address(Optional.empty()));
        List<State> pressing = List.of(State.NONE_GIVEN, State.TARGET_NOT_REACHED, State.PAIR_MISSING).stream()
                .filter(counts::containsKey)
                .toList();
        for (State some : pressing) {
            sentence.text("; ").link(counts.get(some) + " with " + phrase(some), address(Optional.of(some)));
        }
        return sentence.text(". ")
                .link(
                        Counted.of(
                                owing.size(),
                                "refitting or training is owed after a shift",
                                "refittings or trainings are owed after a shift"),
                        ROUTE + "#" + OWED)
                .text(".");
    }

    private static String phrase(State state) {
        return switch (state) {
            case NONE_GIVEN -> "no protector on record";
            case TARGET_NOT_REACHED -> "one that does not reach the target";
            case PAIR_MISSING -> "one where a plug and a muff are asked for";
            case NO_ESTIMATE -> "no estimate";
            case REACHED -> "one that reaches the target";
        };
    }

    private String address(Optional<State> state) {
        return parameters.withChoice(STATE, state).pathOf(ROUTE);
    }

    private void showOwed(List<OwedRow> owing) {
        owed.removeAll();
        owed.add(new H2("Owed after a shift"));
        if (owing.isEmpty()) {
            owed.add(new EmptyHint(
                    "No case leaves refitting or training owed.",
                    "A shift that is confirmed brings both, where the site's rule set asks for them."));
            return;
        }
        if (owing.size() > OWED_SHOWN) {
            owed.add(new Paragraph("The first " + OWED_SHOWN + " of " + owing.size()
                    + " are shown. Choose a site or a department to see others."));
        }
        List<ListColumn<OwedRow, ?>> columns = List.of(
                ListColumn.unordered(
                        "Name",
                        10,
                        row -> ListCell.link(row.name(), WorkerProtectorsView.path(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.unordered("Department", 8, row -> ListCell.text(row.department())),
                ListColumn.unordered(
                        "Owed",
                        10,
                        row -> ListCell.text(
                                Words.capitalised(CaseWords.duty(row.owed().duty())))),
                ListColumn.unordered("After the test of", 8, row -> ListCell.text(Words.day(row.testDate()))),
                ListColumn.unordered(
                        "Due",
                        8,
                        row -> ListCell.text(row.owed().by().map(Words::day).orElse("the rule gives no date"))),
                ListColumn.unordered(
                        "Paragraph",
                        10,
                        row -> ListCell.text(
                                row.owed().rule().map(rule -> rule.place()).orElse(""))));
        owed.add(new ListTable<>(
                "Refitting and training that cases leave owed",
                columns,
                owing.stream().limit(OWED_SHOWN).toList(),
                row -> {}));
    }

    private static List<ListColumn<WearingRow, WearingColumn>> columns() {
        return List.of(
                ListColumn.of(
                        "Name",
                        WearingColumn.NAME,
                        9,
                        row -> ListCell.link(row.name(), WorkerProtectorsView.path(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.of(
                        "Department",
                        WearingColumn.DEPARTMENT,
                        8,
                        row -> ListCell.text(row.department()).withNote(Place.name(row.site()))),
                ListColumn.of(
                        "Noise (dBA)",
                        WearingColumn.LEVEL,
                        5,
                        row -> ListCell.figures(
                                row.twaDba().map(ProtectionWords::decibels).orElse("not known"))),
                ListColumn.unordered(
                        "Why",
                        13,
                        row -> ListCell.text(row.mustWear().reasons().stream()
                                .map(reason -> ProtectionWords.reason(reason, row.facts())
                                        .withBasis())
                                .collect(Collectors.joining(" ")))),
                ListColumn.unordered(
                        "Protector",
                        8,
                        row -> ListCell.text(row.has().isEmpty() ? "none" : String.join(", ", row.has()))),
                ListColumn.unordered(
                        "Under it (dBA)",
                        5,
                        row -> row.best().map(ProtectorsView::level).orElse(ListCell.EMPTY)),
                ListColumn.of(
                        "State",
                        WearingColumn.STATE,
                        9,
                        row -> ListCell.state(WearingWords.kind(row.state()), WearingWords.state(row.state()))));
    }

    private static ListCell level(Estimate estimate) {
        return estimate instanceof Estimate.Estimated found
                ? ListCell.figures(ProtectionWords.decibels(found.levelUnder()))
                : ListCell.EMPTY;
    }

    private static Map<String, Order<WearingColumn>> orders() {
        Map<String, Order<WearingColumn>> orders = new LinkedHashMap<>();
        orders.put("most pressing first", Order.ascending(WearingColumn.STATE));
        orders.put("name", Order.ascending(WearingColumn.NAME));
        orders.put("department", Order.ascending(WearingColumn.DEPARTMENT));
        orders.put("loudest first", Order.descending(WearingColumn.LEVEL));
        return orders;
    }
}
