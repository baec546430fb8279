package org.thresholdregister.platform.accounts;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.OpenSessions;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SiteScope;

/** The accounts, as an administrator keeps them. An account is never removed, since the audit trail refers to it. */
@Service
@PreAuthorize(Roles.HAS_ADMINISTRATOR)
public class Accounts {

    /**
     * One account.
     *
     * @param active whether it may sign in
     * @param paused whether sign-in rests for some minutes after wrong passwords
     */
    public record Account(
            String username, String displayName, Role role, SiteScope scope, boolean active, boolean paused) {}

    private final UserAccountRepository accounts;
    private final AccountBook book;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final OpenSessions openSessions;
    private final boolean demo;
    private final InstantSource systemTime = InstantSource.system();

    Accounts(
            UserAccountRepository accounts,
            AccountBook book,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            OpenSessions openSessions,
            Environment environment) {
        this.accounts = accounts;
        this.book = book;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.openSessions = openSessions;
        this.demo = environment.acceptsProfiles(Profiles.of(DemoAccounts.PROFILE));
    }

    /** All accounts by username. */
    @Transactional(readOnly = true)
    public List<Account> list() {
        Instant now = systemTime.instant();
        return accounts.findAllByDemoOrderByUsername(demo).stream()
                .map(account -> account.toAccount(now))
                .toList();
    }

    /** Adds an account. Returns what stands against it; where that is nothing, the account is stored. */
    @Transactional
    public List<AccountProblem> add(NewAccount account) {
        var problems = book.problemsOf(account);
        if (problems.isEmpty()) {
            book.store(account, false, currentUser.username());
        }
        return problems;
    }

    /**
     * Ends an account's sign-in, and its open sessions at once.
     *
     * @throws IllegalArgumentException for the administrator's own account, so that one always remains
     */
    @Transactional
    public void deactivate(String username) {
        if (username.equals(currentUser.username())) {
            throw new IllegalArgumentException("an administrator does not deactivate the own account");
        }
        get(username).deactivate();
        auditTrail.record(AccountAction.ACCOUNT_DEACTIVATED, "account", username, "");
        openSessions.endAfterCommit(username);
    }

    /** Lets a deactivated account sign in again. */
    @Transactional
    public void reactivate(String username) {
        get(username).reactivate();
        auditTrail.record(AccountAction.ACCOUNT_REACTIVATED, "account", username, "");
    }

    /**
     * Sets a new password, ends a pause after wrong ones, and ends the account's open sessions. Returns what stands
     * against the password; where that is nothing, it is stored.
     */
    @Transactional
    public Optional<String> setPassword(String username, String password) {
        var objection = PasswordRule.objection(password, username);
        if (objection.isEmpty()) {
            get(username).setPasswordHash(book.hash(password));
            auditTrail.record(AccountAction.PASSWORD_SET, "account", username, "");
            openSessions.endAfterCommit(username);
        }
        return objection;
    }

    private UserAccount get(String username) {
        return accounts.findByUsername(username).orElseThrow(() -> new NoSuchElementException("no such account"));
    }
}
