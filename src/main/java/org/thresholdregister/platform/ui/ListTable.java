package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.function.SerializableConsumer;
import java.util.List;

/** A short list as a table; below 640 pixels each row is a card. */
public class ListTable<T> extends NativeTable {

    /** @param action what a button in a row does */
    public ListTable(
            String caption, List<? extends ListColumn<T, ?>> columns, List<T> rows, SerializableConsumer<T> action) {
        addClassNames("tr-table", "tr-cards");
        setCaptionText(caption);
        var header = new NativeTableRow();
        for (ListColumn<T, ?> column : columns) {
            header.add(headerCell(column.header()));
        }
        getHead().add(header);
        var body = addBody();
        for (T row : rows) {
            var line = new NativeTableRow();
            for (ListColumn<T, ?> column : columns) {
                line.add(cell(column.header(), column.cell().apply(row), row, action));
            }
            body.add(line);
        }
    }

    private static Component headerCell(String title) {
        if (title.isEmpty()) {
            return new NativeTableCell();
        }
        var cell = new NativeTableHeaderCell(title);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private static <T> NativeTableCell cell(String header, ListCell content, T row, SerializableConsumer<T> action) {
        var cell = new NativeTableCell();
        cell.getElement().setAttribute("data-label", header);
        if (content.isEmpty()) {
            return cell;
        }
        var lines = new Div();
        lines.addClassName("tr-cell");
        if (!content.path().isEmpty()) {
            lines.add(new Anchor(content.path(), content.words()));
        } else if (!content.classNames().isEmpty()) {
            var words = new Span(content.words());
            words.setClassName(content.classNames());
            lines.add(words);
        } else if (!content.words().isEmpty()) {
            lines.add(new Span(new Text(content.words())));
        }
        if (!content.note().isEmpty()) {
            var note = new Span(content.note());
            note.addClassName("tr-cell-note");
            lines.add(note);
        }
        if (!content.action().isEmpty()) {
            cell.addClassName("tr-actions");
            var button = new NativeButton(content.action(), click -> action.accept(row));
            button.addClassName("tr-row-button");
            button.setAriaLabel(content.actionLabel());
            lines.add(button);
        }
        cell.add(lines);
        return cell;
    }
}
