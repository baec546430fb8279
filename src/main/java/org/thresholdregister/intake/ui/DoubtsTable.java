package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.Map;
import java.util.TreeMap;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.core.wording.Words;

/** What there is to doubt about the new tests, by kind; for information, since nothing is left out for it. */
class DoubtsTable extends NativeTable {

    DoubtsTable(Map<FlagKind, Integer> tests) {
        addClassNames("tr-table", "tr-cards");
        setCaptionText("New tests that are worth a second look. They are stored like the others, and each worker's page"
                + " says why.");
        var count = header("Tests", "col");
        count.addClassName("tr-figures");
        getHead().add(new NativeTableRow(header("What is odd", "col"), header("Weight", "col"), count));
        new TreeMap<>(tests).forEach((kind, number) -> getBody().add(row(kind, number)));
    }

    private static NativeTableRow row(FlagKind kind, int tests) {
        var odd = header(Words.capitalised(ValidityWords.kind(kind)), "row");
        odd.getElement().setAttribute("data-label", "What is odd");
        var weight = new NativeTableCell(ValidityWords.weight(kind.weight()));
        weight.getElement().setAttribute("data-label", "Weight");
        var number = new NativeTableCell(ImportWords.digits(tests));
        number.addClassName("tr-figures");
        number.getElement().setAttribute("data-label", "Tests");
        return new NativeTableRow(odd, weight, number);
    }

    private static NativeTableHeaderCell header(String words, String scope) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", scope);
        return cell;
    }
}
