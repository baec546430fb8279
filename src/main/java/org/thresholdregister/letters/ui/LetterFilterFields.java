package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.letters.LetterFilter;

/** Narrows the printed letters down. */
class LetterFilterFields extends Div {

    private final TextField search = new TextField("Name or number");
    private final ComboBox<LetterKind> kind = new ComboBox<>("Letter", List.of(LetterKind.values()));
    private final ComboBox<Boolean> given = new ComboBox<>("State", List.of(false, true));

    LetterFilterFields(SerializableRunnable changed) {
        addClassName("tr-filters");
        getElement().setAttribute("role", "search");
        search.setValueChangeMode(ValueChangeMode.LAZY);
        kind.setItemLabelGenerator(LetterLabels::kind);
        given.setItemLabelGenerator(is -> is ? "given" : "not given yet");
        for (var field : List.of(kind, given)) {
            field.setPlaceholder("all");
            field.setClearButtonVisible(true);
            field.addValueChangeListener(event -> changed.run());
        }
        search.addValueChangeListener(event -> changed.run());
        add(search, kind, given);
    }

    LetterFilter filter() {
        return new LetterFilter(
                search.getValue(), Optional.ofNullable(kind.getValue()), Optional.ofNullable(given.getValue()));
    }
}
