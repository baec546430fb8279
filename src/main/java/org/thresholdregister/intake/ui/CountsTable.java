package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.List;
import org.thresholdregister.intake.ImportCounts;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.Table;
import org.thresholdregister.intake.UploadedFile;

/** What becomes of the rows of each file. */
class CountsTable extends NativeTable {

    private static final List<String> TITLES = List.of("New", "Changed", "In the register already", "Left out");

    CountsTable(ImportPreview preview) {
        addClassNames("tr-table", "tr-cards");
        setCaptionText("Rows of each file. A test or a decision on record is never changed by an import.");
        var header = new NativeTableRow(header("File", "col"));
        TITLES.forEach(title -> {
            var cell = header(title, "col");
            cell.addClassName("tr-figures");
            header.add(cell);
        });
        getHead().add(header);
        preview.files().stream()
                .sorted((a, b) -> a.table().compareTo(b.table()))
                .forEach(file -> add(file, preview));
    }

    private void add(UploadedFile file, ImportPreview preview) {
        ImportCounts counts = preview.counts();
        Table table = file.table();
        List<Integer> numbers = switch (table) {
            case ROSTER -> List.of(counts.newWorkers(), counts.changedWorkers(), counts.unchangedWorkers());
            case AUDIOGRAMS -> List.of(counts.newTests(), 0, counts.unchangedTests());
            case DECISIONS -> List.of(counts.newDecisions(), 0, counts.unchangedDecisions());
        };
        var name = header(ImportWords.title(table) + ": " + file.name(), "row");
        name.getElement().setAttribute("data-label", "File");
        var row = new NativeTableRow(name);
        for (int i = 0; i < TITLES.size(); i++) {
            int number = i < numbers.size() ? numbers.get(i) : preview.rowsLeftOut(table);
            var cell = new NativeTableCell(ImportWords.digits(number));
            cell.addClassName("tr-figures");
            cell.getElement().setAttribute("data-label", TITLES.get(i));
            row.add(cell);
        }
        getBody().add(row);
    }

    private static NativeTableHeaderCell header(String words, String scope) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", scope);
        return cell;
    }
}
