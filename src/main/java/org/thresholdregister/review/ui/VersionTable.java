package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.review.DeterminationVersion;
import org.thresholdregister.review.VersionWords;

/** What was determined about one ear on one test before, as it was made, and why it changed; unfolds. */
class VersionTable extends Div {

    private static final List<ListColumn<DeterminationVersion, ?>> COLUMNS = List.of(
            ListColumn.unordered("Stood", 8, version -> ListCell.text(Words.capitalised(VersionWords.time(version)))),
            ListColumn.unordered(
                    "Found",
                    8,
                    version -> ListCell.text(version.finding().answer()).withNote(VersionWords.settled(version))),
            ListColumn.unordered(
                    "Compared with",
                    9,
                    version -> ListCell.text(version.finding().comparison())),
            ListColumn.unordered("Determined by", 12, version -> ListCell.text(VersionWords.rules(version.basis()))),
            ListColumn.unordered("Why it changed", 10, version -> ListCell.text(VersionWords.why(version))));

    /** @param versions the earliest first; at least one of them former */
    VersionTable(List<DeterminationVersion> versions) {
        addClassName("tr-scroll");
        long former = versions.stream()
                .filter(version -> version.replacement().isPresent())
                .count();
        var details = new NativeDetails();
        details.setSummaryText("As determined before, "
                + Words.ear(versions.getFirst().ear()) + ": "
                + Counted.of(Math.toIntExact(former), "former determination", "former determinations"));
        details.setContent(new ListTable<>("As they were made, the earliest first", COLUMNS, versions, version -> {}));
        add(details);
    }
}
