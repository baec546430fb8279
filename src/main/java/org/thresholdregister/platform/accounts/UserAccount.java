package org.thresholdregister.platform.accounts;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.platform.security.SiteScope;

@Entity
class UserAccount {

    private static final int FREE_ATTEMPTS = 5;
    private static final Duration FIRST_PAUSE = Duration.ofMinutes(1);
    private static final Duration LONGEST_PAUSE = Duration.ofMinutes(15);

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    private String username;
    private String displayName;
    private String passwordHash;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Role role;

    private boolean allSites;

    @ElementCollection(fetch = FetchType.EAGER)
    @CollectionTable(name = "user_account_site", joinColumns = @JoinColumn(name = "user_account_id"))
    @Column(name = "site")
    private Set<String> sites = new HashSet<>();

    private boolean active = true;
    private boolean demo;
    private int failedAttempts;
    private @Nullable Instant lockedUntil;

    @SuppressWarnings("NullAway.Init")
    protected UserAccount() {}

    UserAccount(String username, String displayName, String passwordHash, Role role, SiteScope scope, boolean demo) {
        this.username = username;
        this.displayName = displayName;
        this.passwordHash = passwordHash;
        this.role = role;
        this.demo = demo;
        switch (scope) {
            case SiteScope.AllSites() -> allSites = true;
            case SiteScope.OnlySites(var names) -> sites.addAll(names);
        }
    }

    String username() {
        return username;
    }

    void deactivate() {
        active = false;
    }

    void reactivate() {
        active = true;
    }

    void setPasswordHash(String hash) {
        passwordHash = hash;
        failedAttempts = 0;
        lockedUntil = null;
    }

    boolean isLockedAt(Instant now) {
        return lockedUntil != null && now.isBefore(lockedUntil);
    }

    /**
     * Counts a wrong password. From the fifth in a row on, each is followed by a pause in which nobody signs in: one
     * minute, then twice as long each time, fifteen at most. What is tried during a pause does not count.
     */
    void countFailureAt(Instant now) {
        if (isLockedAt(now)) {
            return;
        }
        failedAttempts++;
        if (failedAttempts >= FREE_ATTEMPTS) {
            int doublings = Math.min(failedAttempts - FREE_ATTEMPTS, 10);
            Duration pause = FIRST_PAUSE.multipliedBy(1L << doublings);
            lockedUntil = now.plus(pause.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : pause);
        }
    }

    void forgetFailures() {
        failedAttempts = 0;
        lockedUntil = null;
    }

    SiteScope scope() {
        return allSites ? SiteScope.all() : SiteScope.only(sites);
    }

    SignedInUser toUser(boolean demoAllowed, Instant now) {
        return new SignedInUser(
                username, displayName, passwordHash, role, scope(), active && (demoAllowed || !demo), isLockedAt(now));
    }

    Accounts.Account toAccount(Instant now) {
        return new Accounts.Account(username, displayName, role, scope(), active, isLockedAt(now));
    }
}
