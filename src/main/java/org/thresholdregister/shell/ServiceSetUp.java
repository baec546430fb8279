package org.thresholdregister.shell;

import com.vaadin.flow.server.CustomizedSystemMessages;
import com.vaadin.flow.server.ServiceInitEvent;
import com.vaadin.flow.server.VaadinServiceInitListener;
import com.vaadin.flow.server.WrappedSession;
import com.vaadin.flow.server.communication.IndexHtmlResponse;
import java.security.SecureRandom;
import java.util.Base64;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What the framework is told once, as it starts: nonces, errors in words, and that an idle session ends wholly. */
@Component
class ServiceSetUp implements VaadinServiceInitListener {

    private static final int NONCE_BYTES = 16;

    private final Incidents incidents;
    private final transient SecureRandom random = new SecureRandom();

    ServiceSetUp(Incidents incidents) {
        this.incidents = incidents;
    }

    @Override
    public void serviceInit(ServiceInitEvent event) {
        var service = event.getSource();
        event.addIndexHtmlRequestListener(this::addNonce);
        service.setSystemMessagesProvider(info -> inWords());
        service.addSessionInitListener(
                init -> init.getSession().setErrorHandler(new UnexpectedErrorHandler(incidents)));
        service.addSessionDestroyListener(
                destroyed -> endWholly(destroyed.getSession().getSession()));
    }

    /** The framework drops an idle session of its own kind only; the sign-in hangs on the one below. */
    private static void endWholly(@Nullable WrappedSession session) {
        if (session == null) {
            return;
        }
        try {
            session.invalidate();
        } catch (IllegalStateException e) {
            // It is ending already, which is why the framework's session was destroyed.
        }
    }

    private void addNonce(IndexHtmlResponse page) {
        byte[] bytes = new byte[NONCE_BYTES];
        random.nextBytes(bytes);
        String nonce = Base64.getEncoder().encodeToString(bytes);
        page.getDocument().getElementsByTag("script").attr("nonce", nonce);
        var response = page.getVaadinResponse();
        response.setHeader("Content-Security-Policy", ContentSecurityPolicy.withNonce(nonce));
        response.setHeader("X-Frame-Options", "DENY");
    }

    private static CustomizedSystemMessages inWords() {
        var messages = new CustomizedSystemMessages();
        messages.setSessionExpiredNotificationEnabled(false);
        messages.setSessionExpiredURL(LoginView.PATH + "?ended");
        messages.setInternalErrorCaption("Something went wrong");
        messages.setInternalErrorMessage("This page cannot go on. What was stored is safe. Reload the page.");
        messages.setCookiesDisabledCaption("Cookies are turned off");
        messages.setCookiesDisabledMessage("This register needs a cookie to keep you signed in. Allow it and reload.");
        return messages;
    }
}
