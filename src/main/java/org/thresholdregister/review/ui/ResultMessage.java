package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Paragraph;

/** Says what the last entry changed, also to those who do not see it. */
class ResultMessage extends Paragraph {

    ResultMessage() {
        addClassName("tr-result");
        getElement().setAttribute("role", "status");
    }

    /** Says it where it is seen, and takes the focus; nothing where the words are empty. */
    void say(String words) {
        setText(words);
        if (!words.isEmpty()) {
            Attention.to(this);
        }
    }
}
