package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.Optional;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.BoardCounts;
import org.thresholdregister.review.DueState;

/** What is owed, kind by kind and by how soon; each number leads to its list. */
class DueTable extends NativeTable {

    DueTable(BoardCounts counts) {
        addClassNames("tr-table", "tr-due");
        setCaptionText("What is owed, by kind and by when it is due");
        var header = new NativeTableRow();
        header.add(heading("Owed", "col"));
        for (DueState state : DueState.values()) {
            header.add(figures(heading(Words.capitalised(BoardWords.state(state)), "col")));
        }
        getHead().add(header);
        var body = addBody();
        for (String kind : counts.kinds()) {
            var row = new NativeTableRow();
            row.add(heading(Words.capitalised(BoardWords.kind(kind)), "row"));
            for (DueState state : DueState.values()) {
                row.add(count(counts.of(kind, state), Optional.of(kind), state));
            }
            body.add(row);
        }
        var all = new NativeTableRow();
        all.add(heading("All", "row"));
        for (DueState state : DueState.values()) {
            all.add(count(counts.of(state), Optional.empty(), state));
        }
        body.add(all);
    }

    private static NativeTableCell count(int number, Optional<String> kind, DueState state) {
        if (number == 0) {
            return figures(new NativeTableCell(new Text("0")));
        }
        var link = new Anchor(BoardAddress.of(kind, Optional.of(state)), Integer.toString(number));
        link.setAriaLabel(number + " " + kind.map(BoardWords::kind).orElse("in all") + ", " + BoardWords.state(state));
        if (state == DueState.OVERDUE) {
            link.addClassName("tr-overdue");
        }
        return figures(new NativeTableCell(link));
    }

    private static NativeTableHeaderCell heading(String words, String scope) {
        var cell = new NativeTableHeaderCell(words);
        cell.getElement().setAttribute("scope", scope);
        return cell;
    }

    private static <C extends Component> C figures(C cell) {
        cell.addClassName("tr-figures");
        return cell;
    }
}
