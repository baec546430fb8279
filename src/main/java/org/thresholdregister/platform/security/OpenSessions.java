package org.thresholdregister.platform.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import jakarta.servlet.http.HttpSessionEvent;
import jakarta.servlet.http.HttpSessionListener;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.session.SessionAuthenticationStrategy;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** The sessions people are signed in with, so that an account that is closed is closed at once. */
@Component
public class OpenSessions implements SessionAuthenticationStrategy, HttpSessionListener {

    private final ConcurrentHashMap<String, Set<HttpSession>> byUsername = new ConcurrentHashMap<>();

    @Override
    public void onAuthentication(
            Authentication authentication, HttpServletRequest request, HttpServletResponse response) {
        byUsername
                .computeIfAbsent(authentication.getName(), username -> ConcurrentHashMap.newKeySet())
                .add(request.getSession());
    }

    @Override
    public void sessionDestroyed(HttpSessionEvent event) {
        byUsername.values().forEach(sessions -> sessions.remove(event.getSession()));
    }

    /** Ends every session of the account once the current transaction stands. */
    public void endAfterCommit(String username) {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCommit() {
                end(username);
            }
        });
    }

    private void end(String username) {
        List.copyOf(byUsername.getOrDefault(username, Set.of())).forEach(session -> {
            try {
                session.invalidate();
            } catch (IllegalStateException e) {
                // It ended by itself in the meantime, which is what is wanted.
            }
        });
    }
}
