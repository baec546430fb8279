package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.grid.Grid;
import com.vaadin.flow.component.grid.GridSortOrder;
import com.vaadin.flow.component.grid.GridVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.data.provider.QuerySortOrder;
import com.vaadin.flow.data.provider.SortDirection;
import com.vaadin.flow.data.renderer.LitRenderer;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializablePredicate;
import com.vaadin.flow.router.NotFoundException;
import java.io.Serializable;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.platform.query.Order;

/**
 * A long list, fetched as it is scrolled. Up to {@value #WHOLE_UP_TO} rows it stands whole, so that it prints; below 640
 * pixels each row is a card. Clicking a heading orders the list, as does the field of {@link #order()}, which also knows
 * orders that have no column.
 */
public class ListGrid<T, C extends Enum<C>> extends Div {

    private static final int WHOLE_UP_TO = 100;

    /** The look of a narrow window is the client's to choose, so that it follows the window at once. */
    private static final String FOLLOW_WINDOW = """
            const narrow = window.matchMedia('(max-width: 640px)');
            const follow = () => this.querySelectorAll('vaadin-grid-column').forEach(
                column => column.hidden = column.classList.contains('tr-card-column') !== narrow.matches);
            follow();
            narrow.addEventListener('change', follow);
            """;

    /**
     * On the screen the grid places its rows itself. On paper they follow each other, so that no row is cut in two and
     * the last one is not cut off; a page's style sheet does not reach that far into the grid.
     */
    private static final String LET_ROWS_FLOW_ON_PAPER = """
            const paper = new CSSStyleSheet();
            paper.replaceSync(`@media print {
              :host, #scroller, #table, #items {
                height: auto !important; max-height: none !important; overflow: visible !important;
              }
              #scroller, #table { display: block !important; position: static !important; }
              #items > tr { break-inside: avoid; position: static !important; transform: none !important; }
            }`);
            this.shadowRoot.adoptedStyleSheets = [...this.shadowRoot.adoptedStyleSheets, paper];
            """;

    /** Fetches rows. */
    @FunctionalInterface
    public interface Pages<T, C extends Enum<C>> extends Serializable {
        List<T> find(Order<C> order, int offset, int limit);
    }

    private final Class<C> columns;
    private final Grid<T> grid = new Grid<>();
    private final Select<String> order = new Select<>();
    private final Map<String, Order<C>> orders;
    private final Paragraph printNote = new Paragraph();
    private Optional<String> route = Optional.empty();
    private FilterParameters shown = FilterParameters.NONE;

    /**
     * @param name what the list is of, for those who do not see it
     * @param orders orders to choose from, with their words; the first is the one to start with
     * @param opens path of the page that a row opens
     * @param action what a button in a row does
     */
    public ListGrid(
            String name,
            Class<C> sortColumns,
            List<ListColumn<T, C>> listColumns,
            Map<String, Order<C>> orders,
            SerializableFunction<T, String> opens,
            SerializableConsumer<T> action) {
        this.columns = sortColumns;
        this.orders = orders;
        addClassName("tr-list");
        order.addClassName("tr-list-order");
        order.setLabel("Order");
        order.setItems(orders.keySet());
        order.setValue(orders.keySet().iterator().next());
        order.setEmptySelectionAllowed(false);
        order.setPlaceholder("by heading");
        order.addValueChangeListener(event -> {
            if (event.isFromClient()) {
                grid.sort(List.of());
                grid.getDataProvider().refreshAll();
                toAddress();
            }
        });
        grid.addClassName("tr-grid");
        grid.addThemeVariants(GridVariant.NO_BORDER, GridVariant.WRAP_CELL_CONTENT);
        grid.setSelectionMode(Grid.SelectionMode.NONE);
        grid.getElement().setAttribute("aria-label", name);
        for (ListColumn<T, C> column : listColumns) {
            addColumn(column, action);
        }
        addCardColumn(listColumns, action);
        grid.addSortListener(event -> {
            if (event.isFromClient()) {
                order.setValue(event.getSortOrder().isEmpty() ? firstOrder() : null);
                toAddress();
            }
        });
        grid.addItemClickListener(event -> UI.getCurrent().navigate(opens.apply(event.getItem())));
        printNote.addClassName("tr-print-note");
        add(grid, printNote);
    }

    /** The field that orders the list, to stand beside those that filter it. */
    public Component order() {
        return order;
    }

    /** Has the address of the page say how the list is ordered. */
    public ListGrid<T, C> orderedByAddress(String pageRoute) {
        route = Optional.of(pageRoute);
        return this;
    }

    /** Orders the list as the address says; as at the start where it says nothing. */
    public void show(FilterParameters parameters) {
        shown = parameters;
        Order<C> now = parameters.order(columns).orElseGet(this::startOrder);
        order.setValue(orders.entrySet().stream()
                .filter(entry -> now.equals(entry.getValue()))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null));
        SortDirection direction = now.descending() ? SortDirection.DESCENDING : SortDirection.ASCENDING;
        grid.sort(grid.getColumns().stream()
                .filter(column -> column.getSortOrder(direction)
                        .anyMatch(sort -> sort.getSorted().equals(now.column().name())))
                .limit(1)
                .map(column -> new GridSortOrder<>(column, direction))
                .toList());
        if (order.isEmpty() && grid.getSortOrder().isEmpty()) {
            throw new NotFoundException("the list is not ordered by this");
        }
    }

    /** How the list is ordered now. */
    public Order<C> ordered() {
        return orderOf(grid.getSortOrder().stream()
                .flatMap(sort -> sort.getSorted().getSortOrder(sort.getDirection()))
                .toList());
    }

    /** Lets rows be chosen, by pointer or by the space bar. */
    public ListGrid<T, C> choosable(SerializableConsumer<Set<T>> changed) {
        grid.setSelectionMode(Grid.SelectionMode.MULTI);
        grid.addSelectionListener(event -> changed.accept(event.getAllSelectedItems()));
        return this;
    }

    /** The rows that are chosen. */
    public Set<T> chosen() {
        return grid.getSelectedItems();
    }

    /** Chooses these rows and no others. */
    public void choose(Collection<T> rows) {
        grid.asMultiSelect().setValue(Set.copyOf(rows));
    }

    /** Marks the rows of which this is true, so that the eye finds them. */
    public ListGrid<T, C> marked(SerializablePredicate<T> rows) {
        grid.setPartNameGenerator(row -> rows.test(row) ? "marked" : null);
        return this;
    }

    /** Shows this many rows, fetched as they are needed. */
    public void show(int count, Pages<T, C> pages) {
        setVisible(count > 0);
        boolean whole = count <= WHOLE_UP_TO;
        grid.setAllRowsVisible(whole);
        printNote.setVisible(!whole);
        printNote.setText("This sheet holds what was on the screen of " + count + " rows. Filter the list to "
                + WHOLE_UP_TO + " rows or fewer to print all of it.");
        grid.setItems(
                query -> pages.find(orderOf(query.getSortOrders()), query.getOffset(), query.getLimit()).stream(),
                query -> count);
    }

    @Override
    protected void onAttach(AttachEvent attachEvent) {
        grid.getElement().executeJs(FOLLOW_WINDOW);
        grid.getElement().executeJs(LET_ROWS_FLOW_ON_PAPER);
    }

    private void toAddress() {
        route.ifPresent(path -> {
            Order<C> now = ordered();
            shown = shown.withOrder(now.equals(startOrder()) ? Optional.empty() : Optional.of(now));
            getUI().ifPresent(ui -> ui.navigate(path, shown.toQueryParameters()));
        });
    }

    private Order<C> orderOf(List<QuerySortOrder> byHeading) {
        if (!byHeading.isEmpty()) {
            QuerySortOrder first = byHeading.getFirst();
            return new Order<>(
                    Enum.valueOf(columns, first.getSorted()), first.getDirection() == SortDirection.DESCENDING);
        }
        String chosen = order.getOptionalValue().orElseGet(this::firstOrder);
        return Objects.requireNonNull(orders.get(chosen));
    }

    private Order<C> startOrder() {
        return Objects.requireNonNull(orders.get(firstOrder()));
    }

    private String firstOrder() {
        return orders.keySet().iterator().next();
    }

    private void addColumn(ListColumn<T, C> column, SerializableConsumer<T> action) {
        LitRenderer<T> renderer = LitRenderer.of(template(""));
        properties(renderer, "", column, action);
        Grid.Column<T> added = grid.addColumn(renderer)
                .setHeader(column.header())
                .setFlexGrow(column.weight())
                .setWidth(column.weight() + "rem")
                .setSortable(false);
        column.sort().ifPresent(sort -> added.setSortProperty(sort.name()).setSortable(true));
    }

    private void addCardColumn(List<ListColumn<T, C>> listColumns, SerializableConsumer<T> action) {
        var template = new StringBuilder("<div class=\"tr-row-card\">");
        for (int i = 0; i < listColumns.size(); i++) {
            template.append("${item.")
                    .append(key(i))
                    .append("empty ? '' : html`<div class=\"tr-row-card-line\"><span class=\"tr-row-card-label\">")
                    .append("${item.")
                    .append(key(i))
                    .append("header}</span>")
                    .append(template(key(i)))
                    .append("</div>`}");
        }
        LitRenderer<T> renderer = LitRenderer.of(template.append("</div>").toString());
        for (int i = 0; i < listColumns.size(); i++) {
            ListColumn<T, C> column = listColumns.get(i);
            properties(renderer, key(i), column, action);
            renderer.withProperty(key(i) + "header", row -> column.header())
                    .withProperty(
                            key(i) + "empty", row -> column.cell().apply(row).isEmpty());
        }
        grid.addColumn(renderer).setFlexGrow(1).getElement().getClassList().add("tr-card-column");
    }

    private static String key(int column) {
        return "c" + column;
    }

    private static String template(String key) {
        return """
                <div class="tr-cell">
                  ${item.$path ? html`<a href="${item.$path}">${item.$words}</a>`
                    : item.$words ? html`<span class="${item.$look}">${item.$words}</span>` : ''}
                  ${item.$note ? html`<span class="tr-cell-note">${item.$note}</span>` : ''}
                  ${item.$action ? html`<button class="tr-row-button" aria-label="${item.$label}" @click="${$act}"
                    >${item.$action}</button>` : ''}
                </div>""".replace("$act}", key + "act}").replace("item.$", "item." + key);
    }

    private static <T> void properties(
            LitRenderer<T> renderer, String key, ListColumn<T, ?> column, SerializableConsumer<T> action) {
        SerializableFunction<T, ListCell> cell = column.cell();
        renderer.withProperty(key + "words", row -> cell.apply(row).words())
                .withProperty(key + "look", row -> cell.apply(row).classNames())
                .withProperty(key + "path", row -> cell.apply(row).path())
                .withProperty(key + "note", row -> cell.apply(row).note())
                .withProperty(key + "action", row -> cell.apply(row).action())
                .withProperty(key + "label", row -> cell.apply(row).actionLabel())
                .withFunction(key + "act", action::accept);
    }
}
