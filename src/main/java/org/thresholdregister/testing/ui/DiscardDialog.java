package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableRunnable;

/** Asks before a draft is thrown away. */
class DiscardDialog extends Dialog {

    DiscardDialog(SerializableRunnable discard) {
        setHeaderTitle("Throw this draft away");
        setWidth("min(28rem, 100%)");
        add(new Paragraph("What you typed on this page is lost. What is on record stays as it is."));
        var keep = new Button("Keep it", click -> close());
        var away = new Button("Throw it away", click -> {
            close();
            discard.run();
        });
        away.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(keep, away);
        keep.focus();
    }
}
