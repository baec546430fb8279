package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableBody;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.ArrayList;
import java.util.List;

/** A short list as an HTML table, each of whose rows becomes a card where the page is narrow. */
class PlainTable extends NativeTable {

    private final List<String> headings;
    private final NativeTableBody body;

    PlainTable(String caption, List<String> headings) {
        this.headings = new ArrayList<>(headings);
        addClassNames("tr-table", "tr-cards");
        setCaptionText(caption);
        var row = new NativeTableRow();
        for (String heading : headings) {
            var cell = new NativeTableHeaderCell(heading);
            cell.getElement().setAttribute("scope", "col");
            row.add(cell);
        }
        getHead().add(row);
        body = addBody();
    }

    /** Adds a row with one content for each heading. */
    void addRow(Component... contents) {
        var row = new NativeTableRow();
        for (int i = 0; i < contents.length; i++) {
            var cell = new NativeTableCell(contents[i]);
            cell.getElement().setAttribute("data-label", headings.get(i));
            row.add(cell);
        }
        body.add(row);
    }

    static Component words(String words) {
        return new Text(words);
    }
}
