package org.thresholdregister.platform.accounts;

import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Prints the address and the sign-ins of the demonstration to the console, once everything is there. */
@Component
@Profile(DemoAccounts.PROFILE)
class DemoNotice {

    @EventListener
    @Order(Ordered.LOWEST_PRECEDENCE)
    void ready(ApplicationReadyEvent event) {
        if (event.getApplicationContext() instanceof WebServerApplicationContext web && web.getWebServer() != null) {
            System.out.printf(
                    "%n  The demonstration is at http://localhost:%d%n"
                            + "  Sign in as %s, %s or %s, with the password %s%n%n",
                    web.getWebServer().getPort(),
                    DemoAccounts.NURSE,
                    DemoAccounts.SAFETY_OFFICER,
                    DemoAccounts.PLANT_MANAGER,
                    DemoAccounts.PASSWORD);
        }
    }
}
