package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Paragraph;

/** Says what the last entry changed, also to those who do not see it. */
class ResultMessage extends Paragraph {

    ResultMessage() {
        addClassName("tr-result");
        getElement().setAttribute("role", "status");
    }

    /**
     * Says it, and leaves the keyboard in the list: at the button that now stands where the one pressed stood, or else at
     * the message.
     *
     * @param place of the row in the list
     */
    void sayBeside(String words, Component list, int place) {
        setText(words);
        getElement().setAttribute("tabindex", "-1");
        getElement().executeJs("""
                        const buttons = [...$0.querySelectorAll('tbody tr')].slice($1)
                            .map(row => row.querySelector('button') ?? row.querySelector('a')).filter(found => found);
                        (buttons[0] ?? this).focus({preventScroll: true});
                        this.scrollIntoView({block: 'nearest'});
                        """, list.getElement(), place);
    }

    /** Says it where it is seen, and takes the focus; nothing where the words are empty. */
    void say(String words) {
        setText(words);
        if (!words.isEmpty()) {
            Attention.to(this);
        }
    }
}
