package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Paragraph;

/** Says what the last entry changed, also to those who do not see it. */
class ResultMessage extends Paragraph {

    ResultMessage() {
        addClassName("tr-result");
        getElement().setAttribute("role", "status");
    }

    void say(String words) {
        setText(words);
    }
}
