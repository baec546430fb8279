package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableFunction;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
        ComboBox<String> field = field(label, names, Place::name);
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
        add(field);
        return field;
    }

    private static void clearable(ComboBox<?> field) {
        field.setPlaceholder("all");
        field.setClearButtonVisible(true);
    }

    private <T> void onChoice(ComboBox<T> field, SerializableFunction<Optional<T>, FilterParameters> changed) {
        field.addValueChangeListener(event -> {
            if (event.isFromClient()) {
                var address = changed.apply(Optional.ofNullable(event.getValue()));
                field.getUI().ifPresent(ui -> ui.navigate(route, address.toQueryParameters()));
            }
        });
    }
}
