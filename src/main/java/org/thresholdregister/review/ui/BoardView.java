package org.thresholdregister.review.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.io.IOException;
import java.io.OutputStream;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.ListGrid;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.SheetCsv;
import org.thresholdregister.review.BoardColumn;
import org.thresholdregister.review.BoardCounts;
import org.thresholdregister.review.BoardFilter;
import org.thresholdregister.review.BoardFilter.Postponed;
import org.thresholdregister.review.BoardRow;
import org.thresholdregister.review.BoardRow.OfTask;
import org.thresholdregister.review.BoardService;
import org.thresholdregister.review.DueState;
import org.thresholdregister.review.TaskKey;
import org.thresholdregister.review.TaskKind;
import org.thresholdregister.roster.WorkerService;

/** Everything that is open, to be narrowed down, ordered, chosen and answered. */
@Route(BoardAddress.ROUTE)
@PageTitle("Follow-ups · Threshold Register")
@Menu(title = "Follow-ups", order = 12)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class BoardView extends Div implements HealthRecordPage, BeforeEnterObserver {

    private final transient BoardService board;
    private final transient BoardDesk desk;
    private final ResultMessage result = new ResultMessage();
    private final Div lead = new Div();
    private final FilterBar filters = new FilterBar(BoardAddress.ROUTE, "Name or number", this::refresh);
    private final ListGrid<BoardRow, BoardColumn> list;
    private final BulkBar bulk;
    private final Div empty = new Div();
    private final Set<String> duties = new LinkedHashSet<>();
    private transient FilterParameters parameters = FilterParameters.NONE;
    private transient BoardFilter filter = BoardFilter.EVERYTHING;
    private int listed;

    BoardView(BoardService board, WorkerService workers, BoardDesk desk, Clock clock) {
        this.board = board;
        this.desk = desk;
        List<String> kinds = new ArrayList<>(
                Arrays.stream(TaskKind.values()).map(TaskKind::word).toList());
        board.counts().kinds().stream()
                .filter(kind -> BoardAddress.task(kind).isEmpty())
                .forEach(duties::add);
        kinds.addAll(duties);
        filters.words(BoardAddress.KIND, "Owed", kinds, BoardWords::kind)
                .choice(BoardAddress.STATE, "Due", List.of(DueState.values()), BoardWords::state)
                .names(BoardAddress.SITE, "Site", workers.sites())
                .names(BoardAddress.DEPARTMENT, "Department", workers.departments())
                .day(BoardAddress.FROM, "Due from")
                .day(BoardAddress.TO, "Due until")
                .choice(BoardAddress.WHO, "Whose to do", List.of(TaskKind.Doer.values()), BoardWords::doer)
                .choice(BoardAddress.POSTPONED, "Put off", List.of(Postponed.values()), BoardWords::postponed);
        list = new ListGrid<BoardRow, BoardColumn>(
                        "Follow-ups",
                        BoardColumn.class,
                        BoardColumns.all(desk.kindsToEnter()),
                        BoardColumns.orders(),
                        BoardWords::path,
                        row -> desk.answer(row, this::entered))
                .orderedByAddress(BoardAddress.ROUTE)
                .marked(row -> row.state() == DueState.OVERDUE)
                .choosable(chosen -> showChosen(chosen.size()));
        bulk = new BulkBar(
                new BulkBar.Actions(
                        () -> withChosen(tasks -> desk.settle(tasks, this::entered)),
                        () -> withChosen(tasks -> desk.book(tasks, this::entered)),
                        () -> withChosen(tasks -> desk.postpone(tasks, this::entered)),
                        () -> withChosen(BoardView::write),
                        this::chooseAll,
                        () -> list.choose(List.of())),
                Downloads.link(
                        "Download as CSV",
                        "follow-ups-" + Dates.inFile(LocalDate.now(clock)) + ".csv",
                        SheetCsv.CONTENT_TYPE,
                        this::download));
        filters.add(list.order());
        add(new H1("Follow-ups"), lead, filters, result, bulk, list, empty);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        parameters = FilterParameters.of(event.getLocation());
        filters.show(parameters);
        list.show(parameters);
        result.say("");
        refresh();
    }

    private void refresh() {
        filter = BoardAddress.filter(parameters, duties, filters.searched());
        listed = board.count(filter);
        BoardCounts counts = board.counts();
        int all = counts.total();
        lead.removeAll();
        lead.add(
                filter.equals(BoardFilter.EVERYTHING)
                        ? BoardWords.ofAll(counts)
                        : BoardWords.ofSome(filter, listed, all));
        BoardFilter shown = filter;
        list.choose(List.of());
        list.show(listed, (order, offset, limit) -> board.find(shown, order, offset, limit));
        bulk.setVisible(listed > 0);
        showChosen(0);
        empty.removeAll();
        if (listed == 0) {
            empty.add(
                    all == 0
                            ? new EmptyHint(
                                    "Nothing is owed to anyone that you may see.",
                                    "What is owed shows here once workers and their tests are on record.")
                            : new EmptyHint(
                                    "Nothing is owed that fits this filter.",
                                    "Choose less, or see them all.",
                                    new Anchor(
                                            BoardAddress.ROUTE,
                                            "See all " + Counted.of(all, "follow-up", "follow-ups"))));
        }
    }

    private void showChosen(int chosen) {
        bulk.show(chosen, listed);
    }

    private void chooseAll() {
        list.choose(board.find(filter, list.ordered(), 0, BoardService.MOST_AT_ONCE));
        result.say("");
    }

    /** Duties of other features are answered on their own pages. */
    private void withChosen(SerializableConsumer<List<OfTask>> action) {
        List<OfTask> tasks = chosenTasks();
        if (tasks.isEmpty()) {
            result.say("What is chosen is seen to on a page of its own. Press its row to go there.");
        } else {
            action.accept(tasks);
        }
    }

    private static void write(List<OfTask> tasks) {
        UI.getCurrent()
                .getPage()
                .setLocation(Paths.letters(
                        tasks.stream().map(OfTask::workerId).distinct().toList()));
    }

    private List<OfTask> chosenTasks() {
        return list.chosen().stream()
                .filter(OfTask.class::isInstance)
                .map(OfTask.class::cast)
                .toList();
    }

    private void download(OutputStream out) throws IOException {
        Order<BoardColumn> order = list.ordered();
        Collection<TaskKey> chosen = chosenTasks().stream().map(OfTask::key).toList();
        SheetCsv.write(
                out,
                BoardColumns.SHEET,
                board.download(filter, order, chosen).stream()
                        .map(BoardColumns::sheetRow)
                        .toList());
    }

    private void entered(String words) {
        refresh();
        result.say(words);
    }
}
