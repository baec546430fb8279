package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.review.ui.People;
import org.thresholdregister.roster.WorkerColumn;
import org.thresholdregister.roster.WorkerFilter;
import org.thresholdregister.roster.WorkerRow;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.testing.TestEntryService;
import org.thresholdregister.testing.WaitingDraft;

/** Where a test begins: somebody is looked up, or a half-typed test is gone on with. */
class StartPart extends Div {

    private static final int SHOWN = 12;
    private static final int SEARCH_AFTER_MILLISECONDS = 250;

    private static final List<ListColumn<WorkerRow, ?>> WORKERS = List.of(
            ListColumn.unordered(
                    "Worker",
                    10,
                    row -> ListCell.link(
                                    People.name(row.givenName(), row.familyName(), row.workerId()),
                                    Paths.test(row.workerId()))
                            .withNote(row.workerId())),
            ListColumn.unordered("Site", 8, row -> ListCell.text(Place.name(row.site()))),
            ListColumn.unordered("Department", 8, row -> ListCell.text(Place.name(row.department()))));

    private final transient WorkerService workers;
    private final TextField search = new TextField("Name or number");
    private final Div matches = new Div();
    private transient List<WorkerRow> found = List.of();

    StartPart(WorkerService workers, TestEntryService tests, Clock clock) {
        this.workers = workers;
        List<WaitingDraft> waiting = tests.waiting();
        search.setClearButtonVisible(true);
        search.setAutofocus(true);
        search.focus();
        search.setValueChangeMode(ValueChangeMode.LAZY);
        search.setValueChangeTimeout(SEARCH_AFTER_MILLISECONDS);
        search.setHelperText("Enter opens the page when one person is left");
        search.addValueChangeListener(change -> refresh());
        search.addKeyPressListener(Key.ENTER, press -> openTheOne());
        matches.getElement().setAttribute("aria-live", "polite");
        add(
                new H1("Test"),
                new LeadSentence(
                        waiting.isEmpty()
                                ? "Whose test is it? No half-typed test of yours waits."
                                : "Whose test is it? "
                                        + Counted.of(
                                                waiting.size(),
                                                "half-typed test of yours waits.",
                                                "half-typed tests of yours wait.")),
                search,
                matches);
        if (!waiting.isEmpty()) {
            add(new H2("Half-typed tests"), drafts(waiting, clock));
        }
    }

    private static ListTable<WaitingDraft> drafts(List<WaitingDraft> waiting, Clock clock) {
        List<ListColumn<WaitingDraft, ?>> columns = List.of(
                ListColumn.unordered(
                        "Worker",
                        10,
                        draft -> ListCell.link(
                                        People.name(draft.givenName(), draft.familyName(), draft.workerId()),
                                        TestAddress.of(draft.workerId(), draft.inPlaceOf()))
                                .withNote(draft.workerId()
                                        + (draft.inPlaceOf().isPresent() ? ", correction of a test on record" : ""))),
                ListColumn.unordered(
                        "Typed", 8, draft -> ListCell.text(Counted.of(draft.thresholds(), "threshold", "thresholds"))),
                ListColumn.unordered(
                        "Last change", 8, draft -> ListCell.text(EntryWords.moment(draft.changedAt(), clock))));
        return new ListTable<>("They count nowhere until they are signed", columns, waiting, draft -> {});
    }

    private void refresh() {
        matches.removeAll();
        String typed = search.getValue().strip();
        if (typed.isEmpty()) {
            found = List.of();
            return;
        }
        var filter = new WorkerFilter(typed, Optional.empty(), Optional.empty(), WorkerFilter.Status.ALL);
        found = workers.find(filter, Order.ascending(WorkerColumn.NAME), 0, SHOWN);
        if (found.isEmpty()) {
            matches.add(new EmptyHint("No worker fits this search.", "Type fewer letters, or the number."));
            return;
        }
        int all = workers.count(filter);
        matches.add(new ListTable<>(Counted.of(all, "worker fits", "workers fit"), WORKERS, found, row -> {}));
        if (all > found.size()) {
            matches.add(new Paragraph("Type more to see the rest."));
        }
    }

    private void openTheOne() {
        refresh();
        if (found.size() == 1) {
            getUI().ifPresent(ui -> ui.navigate(Paths.test(found.getFirst().workerId())));
        }
    }
}
