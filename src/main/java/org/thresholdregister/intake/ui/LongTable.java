package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;

/** A table of words that may have many rows: it shows the first of them, and more when asked. */
class LongTable extends Div {

    private static final int ROWS_AT_A_TIME = 100;

    private final List<String> titles;
    private final List<List<String>> rows;
    private final NativeTable table = new NativeTable();
    private final Button more = new Button("", click -> showMore());
    private int shown;

    LongTable(String caption, List<String> titles, List<List<String>> rows) {
        this.titles = titles;
        this.rows = rows;
        table.addClassNames("tr-table", "tr-cards");
        table.setCaptionText(caption);
        var header = new NativeTableRow();
        for (String title : titles) {
            var cell = new NativeTableHeaderCell(title);
            cell.getElement().setAttribute("scope", "col");
            header.add(cell);
        }
        table.getHead().add(header);
        add(table, more);
        showMore();
    }

    private void showMore() {
        int next = Math.min(shown + ROWS_AT_A_TIME, rows.size());
        for (List<String> row : rows.subList(shown, next)) {
            table.getBody().add(line(row));
        }
        shown = next;
        more.setText("Show " + Math.min(ROWS_AT_A_TIME, rows.size() - shown) + " more of the "
                + ImportWords.digits(rows.size() - shown) + " rows that are not shown yet");
        more.setVisible(shown < rows.size());
    }

    private NativeTableRow line(List<String> row) {
        var line = new NativeTableRow();
        for (int column = 0; column < titles.size(); column++) {
            var cell = new NativeTableCell(row.get(column));
            cell.getElement().setAttribute("data-label", titles.get(column));
            line.add(cell);
        }
        return line;
    }
}
