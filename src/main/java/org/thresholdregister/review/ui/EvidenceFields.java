package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.Optional;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.documents.ui.DocumentField;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.Evidence;

/** Asks how something was done and for what shows it. */
class EvidenceFields extends Div {

    private final Select<Evidence.Means> means = new Select<>();
    private final TextArea note = new TextArea("Note");
    private final DocumentField file = new DocumentField("Letter, signed copy or other file");
    private boolean needed;

    EvidenceFields() {
        addClassName("tr-entry-fields");
        means.setLabel("How");
        means.setItems(Evidence.Means.values());
        means.setItemLabelGenerator(item -> item == null ? "" : Words.capitalised(BoardWords.means(item)));
        means.setEmptySelectionAllowed(true);
        means.setWidthFull();
        note.setMaxLength(DecisionService.LONGEST_REASON);
        note.setHelperText("Such as where a signed copy lies, or the number on the log");
        note.setWidthFull();
        add(means, note, file);
    }

    /** Has something asked for in any case; a notice is owed in writing, and the field says so. */
    void need(boolean ofANotice) {
        needed = true;
        means.setHelperText(ofANotice ? "The notice is owed in writing" : null);
        if (!ofANotice && means.isEmpty()) {
            means.setValue(Evidence.Means.NOTED);
        }
    }

    /** Leaves it open whether anything is given. */
    void mayStayEmpty() {
        needed = false;
        means.setHelperText("May be left empty");
    }

    /** Whether what was given will do; otherwise says beside its field what will not. */
    boolean check() {
        means.setInvalid(false);
        note.setInvalid(false);
        if (file.isUploading()) {
            file.refuse("The file is still on its way. Enter again once it has arrived.");
            return false;
        }
        if (needed && means.isEmpty()) {
            means.setErrorMessage("Say how it was done.");
            means.setInvalid(true);
            return false;
        }
        if (evidence().filter(given -> !given.showsSomething()).isPresent()) {
            note.setErrorMessage("Note how it was done, or hand over a file that shows it.");
            note.setInvalid(true);
            return false;
        }
        return true;
    }

    /** What was given; empty where nothing was. */
    Optional<Evidence> evidence() {
        Optional<Evidence.Attached> attached = file.document().map(Evidence.Attached.New::new);
        if (means.isEmpty() && note.isEmpty() && attached.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Evidence(
                means.getOptionalValue().orElse(Evidence.Means.NOTED),
                note.getValue().strip(),
                attached));
    }
}
