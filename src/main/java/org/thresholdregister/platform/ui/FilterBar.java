package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.platform.query.SearchText;

/**
 * The fields that narrow a list down. A choice leads to the page's address with that choice, so that the address always
 * says what is shown; what is typed to search stays on the page, since it may be a name.
 */
public class FilterBar extends Div {

    private static final int SEARCH_AFTER_MILLISECONDS = 300;

    private final String route;
    private final TextField search = new TextField();
    private final List<SerializableConsumer<FilterParameters>> fields = new ArrayList<>();
    private FilterParameters shown = FilterParameters.NONE;

    /** @param searched told when the text to search has changed */
    public FilterBar(String route, String searchLabel, SerializableRunnable searched) {
        this.route = route;
        addClassName("tr-filters");
        getElement().setAttribute("role", "search");
        search.setLabel(searchLabel);
        search.setClearButtonVisible(true);
        search.setValueChangeMode(ValueChangeMode.LAZY);
        search.setValueChangeTimeout(SEARCH_AFTER_MILLISECONDS);
        search.addValueChangeListener(event -> searched.run());
        add(search);
    }

    /** Adds a choice of constants, carried by the parameter of this name; no choice shows all. */
    public <E extends Enum<E>> FilterBar choice(
            String name, String label, List<E> constants, SerializableFunction<E, String> words) {
        Class<E> type = constants.getFirst().getDeclaringClass();
        ComboBox<E> field = field(label, constants, words);
        clearable(field);
        onChoice(field, choice -> shown.withChoice(name, choice));
        fields.add(parameters -> field.setValue(parameters.choice(name, type).orElse(null)));
        return this;
    }

    /** Adds a choice of names, where an empty name stands for those without one; no choice shows all. */
    public FilterBar names(String name, String label, List<String> names) {
        return words(name, label, names, Place::name);
    }

    /** Adds a choice of values that stand in the address as they are; no choice shows all. */
    public FilterBar words(String name, String label, List<String> values, SerializableFunction<String, String> words) {
        ComboBox<String> field = field(label, values, words);
        clearable(field);
        onChoice(field, choice -> shown.with(name, choice));
        fields.add(parameters -> field.setValue(parameters.text(name).orElse(null)));
        return this;
    }

    /** Adds a choice of years, of which one is always chosen: the one given where the address names none. */
    public FilterBar years(String name, String label, List<Integer> years, int unlessGiven) {
        ComboBox<Integer> field = field(label, years, year -> Integer.toString(year));
        onChoice(field, choice -> shown.with(name, choice.map(year -> Integer.toString(year))));
        fields.add(parameters -> field.setValue(parameters.year(name).orElse(unlessGiven)));
        return this;
    }

    /** Adds a day; none shows all. */
    public FilterBar day(String name, String label) {
        DatePicker field = DayField.labelled(label);
        field.setClearButtonVisible(true);
        add(field);
        field.addValueChangeListener(event -> {
            if (event.isFromClient()) {
                goTo(shown.withDay(name, Optional.ofNullable(event.getValue())));
            }
        });
        fields.add(parameters -> field.setValue(parameters.day(name).orElse(null)));
        return this;
    }

    /** Sets the fields to what the address carries. */
    public void show(FilterParameters parameters) {
        shown = parameters;
        fields.forEach(field -> field.accept(parameters));
    }

    /** What was typed to search; empty where nothing was. */
    public String searched() {
        return search.getValue();
    }

    private <T> ComboBox<T> field(String label, List<T> values, SerializableFunction<T, String> words) {
        var field = new ComboBox<T>(label, values);
        field.setItemLabelGenerator(words::apply);
        field.setAllowCustomValue(true);
        add(field);
        fields.add(parameters -> field.setInvalid(false));
        return field;
    }

    private static void clearable(ComboBox<?> field) {
        field.setPlaceholder("all");
        field.setClearButtonVisible(true);
    }

    private <T> void onChoice(ComboBox<T> field, SerializableFunction<Optional<T>, FilterParameters> changed) {
        field.addValueChangeListener(event -> {
            if (event.isFromClient()) {
                goTo(changed.apply(Optional.ofNullable(event.getValue())));
            }
        });
        field.addCustomValueSetListener(event -> {
            List<T> meant = meant(field, event.getDetail());
            if (meant.size() == 1) {
                goTo(changed.apply(Optional.of(meant.getFirst())));
            } else {
                field.setErrorMessage((meant.isEmpty() ? "None is called \u201c" : "Several begin like \u201c")
                        + event.getDetail() + "\u201d. Nothing is filtered by it; choose one from the list.");
                field.setInvalid(true);
            }
        });
    }

    /** The choices that somebody who has typed this half may mean. */
    private static <T> List<T> meant(ComboBox<T> field, String typed) {
        return field.getListDataView()
                .getItems()
                .filter(value ->
                        SearchText.matches(field.getItemLabelGenerator().apply(value), typed))
                .toList();
    }

    private void goTo(FilterParameters address) {
        getUI().ifPresent(ui -> ui.navigate(route, address.toQueryParameters()));
    }
}
