package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.function.SerializableRunnable;

/** Asks before a day is called off. */
class CallOffDialog extends Dialog {

    CallOffDialog(SerializableRunnable callOff) {
        setHeaderTitle("Call the day off");
        setWidth("min(30rem, 100%)");
        add(new Paragraph("Everybody on the list is taken off it and stays due. A day that was called off does not come"
                + " back; plan another."));
        var button = new Button("Call it off", click -> {
            close();
            callOff.run();
        });
        button.addThemeVariants(ButtonVariant.PRIMARY);
        getFooter().add(new Button("Keep it", click -> close()), button);
    }
}
