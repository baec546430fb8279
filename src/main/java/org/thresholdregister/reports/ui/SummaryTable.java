package org.thresholdregister.reports.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryLine;
import org.thresholdregister.core.wording.SummaryWords;

/** Counts as a table, one column for each measure. */
class SummaryTable extends NativeTable {

    private SummaryTable(String caption, List<String> labels) {
        addClassNames("tr-table", "tr-cards", "tr-summary");
        setCaptionText(caption);
        var header = new NativeTableRow();
        labels.forEach(label -> header.add(columnHeader(label)));
        for (Measure measure : Measure.values()) {
            var cell = columnHeader(measure.title());
            cell.addClassName("tr-figures");
            header.add(cell);
        }
        getHead().add(header);
    }

    /** One line for each site and department. */
    static SummaryTable ofGroups(int year, List<SummaryLine> lines) {
        var table = new SummaryTable(
                "Counts of " + year + ". One person with both ears on one date is one shift and one case.",
                List.of("Site", "Department"));
        for (SummaryLine line : lines) {
            var row = table.add(line, "Site", SummaryWords.site(line.group()));
            var department = cell("Department", new Text(SummaryWords.department(line.group())));
            row.addComponentAtIndex(1, department);
            if (line.group().isTotal()) {
                row.addClassName("tr-total");
            }
        }
        return table;
    }

    /** One line for each year. */
    static SummaryTable ofYears(List<SummaryLine> lines) {
        var table = new SummaryTable("All sites and departments by year.", List.of("Year"));
        lines.forEach(line -> table.add(line, "Year", Integer.toString(line.year())));
        return table;
    }

    private NativeTableRow add(SummaryLine line, String label, String words) {
        var first = new NativeTableHeaderCell(words);
        first.getElement().setAttribute("scope", "row");
        first.getElement().setAttribute("data-label", label);
        var row = new NativeTableRow(first);
        for (Measure measure : Measure.values()) {
            var cell = cell(measure.title(), new Text(SummaryWords.count(line.count(measure))));
            cell.addClassName("tr-figures");
            row.add(cell);
        }
        getBody().add(row);
        return row;
    }

    private static NativeTableHeaderCell columnHeader(String title) {
        var cell = new NativeTableHeaderCell(title);
        cell.getElement().setAttribute("scope", "col");
        return cell;
    }

    private static NativeTableCell cell(String label, Component content) {
        var cell = new NativeTableCell(content);
        cell.getElement().setAttribute("data-label", label);
        return cell;
    }
}
