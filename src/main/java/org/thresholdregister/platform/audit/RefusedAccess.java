package org.thresholdregister.platform.audit;

import jakarta.servlet.http.HttpServletRequest;
import org.aopalliance.intercept.MethodInvocation;
import org.springframework.context.event.EventListener;
import org.springframework.security.authorization.event.AuthorizationDeniedEvent;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.CurrentUser;

/**
 * Notes what a signed-in person was refused, in a transaction of its own, since what was refused is rolled back.
 * Visitors who are not signed in are sent to the sign-in page and not noted.
 */
@Service
public class RefusedAccess {

    private enum Refusal implements AuditAction {
        ACCESS_REFUSED
    }

    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;

    RefusedAccess(AuditTrail auditTrail, CurrentUser currentUser) {
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
    }

    /** Notes that the signed-in person was refused a page. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void page(String path) {
        note("page", path);
    }

    @EventListener
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    void refused(AuthorizationDeniedEvent<?> event) {
        switch (event.getObject()) {
            case MethodInvocation call ->
                note(
                        "service",
                        call.getMethod().getDeclaringClass().getSimpleName() + "."
                                + call.getMethod().getName());
            case HttpServletRequest request -> note("page", request.getRequestURI());
            default -> note("other", event.getObject().getClass().getSimpleName());
        }
    }

    private void note(String kind, String what) {
        if (currentUser.find().isPresent()) {
            auditTrail.record(Refusal.ACCESS_REFUSED, kind, what.substring(0, Math.min(what.length(), 100)), "");
        }
    }
}
