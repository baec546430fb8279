package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Text;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.NativeTable;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableHeaderCell;
import com.vaadin.flow.component.html.NativeTableRow;
import java.util.Optional;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.DueCounts;
import org.thresholdregister.review.FollowUpState;

/** What is owed, kind by kind and by how soon; each number leads to its list. */
class DueTable extends NativeTable {

    DueTable(DueCounts counts) {
        addClassNames("tr-table", "tr-due");
        setCaptionText("What is owed, by kind and by when it is due");
        var header = new NativeTableRow();
        header.add(heading("Owed", "col"));
        for (FollowUpState state : FollowUpState.values()) {
            header.add(figures(heading(Words.capitalised(FollowUpWords.state(state)), "col")));
        }
        getHead().add(header);
        var body = addBody();
        for (FollowUpKind kind : FollowUpKind.values()) {
            var row = new NativeTableRow();
            row.add(heading(Words.capitalised(Words.followUp(kind)), "row"));
            for (FollowUpState state : FollowUpState.values()) {
                row.add(count(counts.of(kind, state), Optional.of(kind), state));
            }
            body.add(row);
        }
        var all = new NativeTableRow();
        all.add(heading("All", "row"));
        for (FollowUpState state : FollowUpState.values()) {
            all.add(count(counts.of(state), Optional.empty(), state));
        }
        body.add(all);
    }

    private static NativeTableCell count(int number, Optional<FollowUpKind> kind, FollowUpState state) {
        if (number == 0) {
            return figures(new NativeTableCell(new Text("0")));
        }
        var link = new Anchor(FollowUpAddress.of(kind, Optional.of(state)), Integer.toString(number));
        link.setAriaLabel(
                number + " " + kind.map(Words::followUp).orElse("in all") + ", " + FollowUpWords.state(state));
        if (state == FollowUpState.OVERDUE) {
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
