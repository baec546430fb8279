package org.thresholdregister.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.server.ErrorEvent;
import com.vaadin.flow.server.ErrorHandler;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.AccessDeniedException;

/** Tells a person whose click failed what happened, what is safe and what to do. */
class UnexpectedErrorHandler implements ErrorHandler {

    private final transient Incidents incidents;

    UnexpectedErrorHandler(Incidents incidents) {
        this.incidents = incidents;
    }

    @Override
    public void error(ErrorEvent event) {
        String words = isRefusal(event.getThrowable())
                ? "Your role does not allow this. Nothing was changed."
                : "Something went wrong and this step was not done. What was stored before is safe. Try once more; if"
                        + " it happens again, give your administrator the reference "
                        + incidents.log(event.getThrowable()) + ".";
        var ui = UI.getCurrent();
        if (ui != null) {
            ui.access(() -> show(words));
        }
    }

    private static void show(String words) {
        var notification = new Notification();
        notification.addClassName("tr-notice");
        notification.setDuration(0);
        notification.setPosition(Notification.Position.TOP_CENTER);
        notification.setAssertive(true);
        var close = new Button("Close", click -> notification.close());
        notification.add(new Span(words), close);
        notification.open();
    }

    private static boolean isRefusal(Throwable failure) {
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof AccessDeniedException) {
                return true;
            }
        }
        return false;
    }
}
