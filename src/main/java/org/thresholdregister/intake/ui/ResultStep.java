package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableRunnable;
import org.thresholdregister.intake.ImportPreview;
import org.thresholdregister.intake.ImportResult;
import org.thresholdregister.intake.ImportService;
import org.thresholdregister.platform.ui.LeadSentence;

/** What came of an import. */
class ResultStep extends Step {

    private ResultStep(String words, String again, SerializableRunnable startOver) {
        super(new LeadSentence(words));
        var buttons = new Div(new Button(again, click -> startOver.run()));
        buttons.addClassName("tr-buttons");
        add(buttons);
    }

    ResultStep(ImportResult result, ImportPreview preview, ImportService imports, SerializableRunnable startOver) {
        this(
                words(result),
                result instanceof ImportResult.Stored ? "Import other files" : "Hand over the files again",
                startOver);
        if (result instanceof ImportResult.Stored) {
            addComponentAtIndex(1, new Anchor("today", "See what is due today"));
            if (preview.lateChanges().stream().anyMatch(change -> change.sent().isAnything())) {
                addComponentAtIndex(2, new Paragraph(LateChangeSection.toBeSeenTo()));
            }
            if (!preview.problems().isEmpty()) {
                add(new ProblemSection(preview, imports));
            }
        }
    }

    static ResultStep failed(SerializableRunnable startOver) {
        return new ResultStep(
                "Something went wrong, and nothing was stored. The register is as it was before.",
                "Hand over the files again",
                startOver);
    }

    private static String words(ImportResult result) {
        return switch (result) {
            case ImportResult.Stored(var counts) -> ImportWords.stored(counts);
            case ImportResult.Cancelled() ->
                "Stopped: nothing was stored, and the files that were handed over are gone.";
            case ImportResult.Expired() ->
                "This preview is not waiting any more, and nothing was stored by it now. Hand over the files again.";
            case ImportResult.RegisterChanged(var anew) ->
                throw new IllegalArgumentException("to be looked at again, not told");
        };
    }
}
