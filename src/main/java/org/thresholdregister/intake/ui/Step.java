package org.thresholdregister.intake.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;

/** One step of an import, which opens with a sentence. */
abstract class Step extends Div {

    private final Component opening;

    Step(Component opening) {
        this.opening = opening;
        opening.getElement().setAttribute("tabindex", "-1");
        add(opening);
    }

    /** Brings the keyboard here, and has the sentence read aloud. */
    final void takeFocus() {
        opening.getElement().callJsFunction("focus");
    }
}
