package org.thresholdregister.platform.accounts;

import java.time.InstantSource;
import org.springframework.context.event.EventListener;
import org.springframework.security.authentication.event.AbstractAuthenticationFailureEvent;
import org.springframework.security.authentication.event.AuthenticationFailureBadCredentialsEvent;
import org.springframework.security.authentication.event.AuthenticationSuccessEvent;
import org.springframework.security.authentication.event.LogoutSuccessEvent;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;

/**
 * Notes sign-ins, failures and sign-outs, and counts wrong passwords. A username is noted only where the
 * account exists: people type passwords into the wrong field.
 */
@Component
class SignInTrail {

    private static final String ACCOUNT = "account";
    private static final String UNKNOWN = "(unknown)";

    private final UserAccountRepository accounts;
    private final AuditTrail auditTrail;
    private final InstantSource systemTime = InstantSource.system();

    SignInTrail(UserAccountRepository accounts, AuditTrail auditTrail) {
        this.accounts = accounts;
        this.auditTrail = auditTrail;
    }

    @EventListener
    @Transactional
    void signedIn(AuthenticationSuccessEvent event) {
        String username = event.getAuthentication().getName();
        accounts.findForUpdateByUsername(username).ifPresent(UserAccount::forgetFailures);
        auditTrail.recordAs(username, AccountAction.SIGNED_IN, ACCOUNT, username, "");
    }

    @EventListener
    @Transactional
    void signInFailed(AbstractAuthenticationFailureEvent event) {
        String typed = AccountBook.normalUsername(event.getAuthentication().getName());
        var account = accounts.findForUpdateByUsername(typed);
        if (event instanceof AuthenticationFailureBadCredentialsEvent) {
            account.ifPresent(known -> known.countFailureAt(systemTime.instant()));
        }
        auditTrail.recordAs(
                AuditTrail.NOBODY_SIGNED_IN,
                AccountAction.SIGN_IN_FAILED,
                ACCOUNT,
                account.map(UserAccount::username).orElse(UNKNOWN),
                event.getException().getClass().getSimpleName());
    }

    @EventListener
    @Transactional
    void signedOut(LogoutSuccessEvent event) {
        String username = event.getAuthentication().getName();
        auditTrail.recordAs(username, AccountAction.SIGNED_OUT, ACCOUNT, username, "");
    }
}
