package org.thresholdregister.employment.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.function.SerializableFunction;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.core.wording.WorkingLifeWords;
import org.thresholdregister.employment.EntryResult;
import org.thresholdregister.employment.WorkingLifeService;

/** Takes an entry back that should never have been made. */
class TakeBackDialog extends Dialog {

    private final TextArea reason = new TextArea("Why the entry was wrong");

    /** @param takeBack takes the entry back for the reason given */
    TakeBackDialog(String entry, SerializableFunction<String, EntryResult> takeBack, EventDialog.Done done) {
        setHeaderTitle("Take an entry back");
        setWidth("min(32rem, 100%)");
        reason.setMaxLength(WorkingLifeService.LONGEST_REASON);
        reason.setWidthFull();
        add(new Paragraph(entry + ". It stays readable, and counts no more."), reason);
        var save = new Button(
                "Take back", click -> answer(takeBack.apply(reason.getValue().strip()), done));
        save.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Cancel", click -> close()), save);
        reason.focus();
    }

    private void answer(EntryResult result, EventDialog.Done done) {
        switch (result) {
            case EntryResult.Entered(boolean stillVisible) -> {
                close();
                done.done(stillVisible);
            }
            case EntryResult.Misfit(var found, boolean ofThis) ->
                complain("Then the entry of " + Words.day(found.about().day()) + " would no longer fit. "
                        + WorkingLifeWords.inconsistency(found.kind()));
            case EntryResult.SiteNotKnown site -> complain("Nothing was changed.");
            case EntryResult.Refused(var why) ->
                complain(
                        why == EntryResult.Reason.REASON_MISSING
                                ? "An entry is taken back only with a reason."
                                : "This entry has been corrected meanwhile. Nothing was changed; open the page again.");
        }
    }

    private void complain(String words) {
        reason.setErrorMessage(words);
        reason.setInvalid(true);
    }
}
