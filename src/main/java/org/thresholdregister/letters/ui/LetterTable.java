package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.function.SerializableFunction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.platform.ui.Paths;

/** Letters to choose from, a row each; below 640 pixels each row is a card. */
class LetterTable<T> extends NativeTable {

    /** A column after the worker's. */
    record Column<T>(String header, SerializableFunction<T, String> text) implements java.io.Serializable {}

    private final transient Map<Checkbox, T> rows = new LinkedHashMap<>();

    /** @param worker name and number, in that order */
    LetterTable(
            String caption,
            List<T> letters,
            SerializableFunction<T, List<String>> worker,
            List<Column<T>> columns,
            boolean choosing) {
        addClassNames("tr-table", "tr-cards");
        setCaptionText(caption);
        var head = new NativeTableRow();
        if (choosing) {
            head.add(new NativeTableCell());
        }
        head.add(heading("Worker"));
        columns.forEach(column -> head.add(heading(column.header())));
        getHead().add(head);
        var body = addBody();
        for (T letter : letters) {
            var row = new NativeTableRow();
            String name = worker.apply(letter).getFirst();
            String number = worker.apply(letter).getLast();
            if (choosing) {
                var box = new Checkbox();
                box.setAriaLabel("Choose " + name + ", "
                        + columns.getFirst().text().apply(letter).toLowerCase());
                rows.put(box, letter);
                row.add(cell("Choose", box));
            }
            row.add(cell("Worker", new Anchor(Paths.worker(number), name), new Span(" " + number)));
            columns.forEach(column ->
                    row.add(cell(column.header(), new Span(column.text().apply(letter)))));
            body.add(row);
        }
    }

    private static NativeTableHeaderCell heading(String words) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private static NativeTableCell cell(String label, com.vaadin.flow.component.Component... content) {
        var cell = new NativeTableCell();
        cell.getElement().setAttribute("data-label", label);
        cell.add(content);
        return cell;
    }

    void chooseAll(boolean chosen) {
        rows.keySet().forEach(box -> box.setValue(chosen));
    }

    List<T> chosen() {
        List<T> chosen = new ArrayList<>();
        rows.forEach((box, letter) -> {
            if (box.getValue()) {
                chosen.add(letter);
            }
        });
        return chosen;
    }
}
