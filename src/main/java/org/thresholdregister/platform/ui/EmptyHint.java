package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;

/** What stands in place of an empty list: why it is empty, and what to do next. */
public class EmptyHint extends Div {

    /** @param nextSteps links or buttons that lead on; may be none */
    public EmptyHint(String whyEmpty, String whatNext, Component... nextSteps) {
        addClassName("tr-empty");
        var why = new Paragraph(whyEmpty);
        why.addClassName("tr-empty-why");
        add(why, new Paragraph(whatNext));
        add(nextSteps);
    }
}
