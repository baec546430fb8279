package org.thresholdregister.platform.accounts;

import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Prints the set-up token to the console, past the log, when the register has no account yet. */
@Component
class SetUpTokenNotice {

    private final FirstSetUp setUp;

    SetUpTokenNotice(FirstSetUp setUp) {
        this.setUp = setUp;
    }

    @EventListener
    void ready(ApplicationReadyEvent event) {
        if (!setUp.isOpen()) {
            return;
        }
        String port =
                event.getApplicationContext() instanceof WebServerApplicationContext web && web.getWebServer() != null
                        ? ":" + web.getWebServer().getPort()
                        : "";
        System.out.printf(
                "%n  This register has no accounts yet. Open http://localhost%s/setup%n"
                        + "  and give this set-up token, which is valid until the first account exists:%n%n"
                        + "      %s%n%n",
                port, setUp.token());
    }
}
