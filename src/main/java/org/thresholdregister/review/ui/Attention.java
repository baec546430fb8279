package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;

/** Leads eye and keyboard to a message, so that neither is left where the button that was pressed has gone. */
public final class Attention {

    private Attention() {}

    public static void to(Component message) {
        message.getElement().setAttribute("tabindex", "-1");
        message.getElement().executeJs("this.scrollIntoView({block: 'center'}); this.focus({preventScroll: true})");
    }
}
