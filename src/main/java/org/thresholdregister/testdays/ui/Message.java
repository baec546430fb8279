package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.html.Paragraph;

/** Says what the last change did, also to those who do not see it. */
class Message extends Paragraph {

    Message() {
        addClassName("tr-result");
        getElement().setAttribute("role", "status");
        getElement().setAttribute("tabindex", "-1");
    }

    /** Leads eye and keyboard to it; nothing where the words are empty. */
    void say(String words) {
        setText(words);
        if (!words.isEmpty()) {
            getElement().executeJs("this.scrollIntoView({block: 'center'}); this.focus({preventScroll: true})");
        }
    }
}
