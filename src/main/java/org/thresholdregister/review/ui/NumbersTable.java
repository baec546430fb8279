package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramTable;

/** The thresholds of an audiogram beside what it is compared with. */
public class NumbersTable extends NativeTable {

    /** @param caption what they are, without the unit */
    public NumbersTable(String caption, AudiogramComparison comparison) {
        AudiogramTable numbers = AudiogramTable.of(comparison);
        addClassNames("tr-table", "tr-audiogram-numbers");
        setCaptionText(caption + ", " + AudiogramTable.UNIT);
        var head = new NativeTableRow(heading(AudiogramTable.FREQUENCY_HEADING, "col"));
        numbers.columns().forEach(column -> head.add(heading(column.heading(), "col")));
        getHead().add(head);
        var body = addBody();
        for (AudiogramTable.Row row : numbers.rows()) {
            var line =
                    new NativeTableRow(heading(Integer.toString(row.frequency().hertz()), "row"));
            row.cells().forEach(cell -> line.add(figure(cell)));
            body.add(line);
        }
    }

    private static NativeTableHeaderCell heading(String words, String scope) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", scope);
        cell.addClassName("tr-figures");
        return cell;
    }

    private static NativeTableCell figure(String words) {
        var cell = new NativeTableCell(words);
        cell.addClassName("tr-figures");
        return cell;
    }
}
