package org.thresholdregister.platform.accounts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.thresholdregister.platform.accounts.AccountProblem.Field;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

/** Checks and stores new accounts, for the administrator, the first set-up and the demonstration alike. */
@Component
class AccountBook {

    private static final Pattern USERNAME = Pattern.compile("[a-z0-9][a-z0-9._-]{1,38}[a-z0-9]");
    private static final int LONGEST_DISPLAY_NAME = 100;
    private static final int LONGEST_SITE = 200;

    private final UserAccountRepository accounts;
    private final PasswordEncoder passwordEncoder;
    private final AuditTrail auditTrail;

    AccountBook(UserAccountRepository accounts, PasswordEncoder passwordEncoder, AuditTrail auditTrail) {
        this.accounts = accounts;
        this.passwordEncoder = passwordEncoder;
        this.auditTrail = auditTrail;
    }

    static String normalUsername(String typed) {
        return typed.strip().toLowerCase(Locale.ROOT);
    }

    List<AccountProblem> problemsOf(NewAccount account) {
        var problems = new ArrayList<AccountProblem>();
        String username = normalUsername(account.username());
        if (!USERNAME.matcher(username).matches()) {
            problems.add(new AccountProblem(
                    Field.USERNAME,
                    "Use 3 to 40 letters a to z, digits, dots, hyphens or underscores, with a letter or digit at"
                            + " either end."));
        } else if (accounts.existsByUsername(username)) {
            problems.add(new AccountProblem(Field.USERNAME, "This username is taken."));
        }
        String displayName = account.displayName().strip();
        if (displayName.isEmpty() || displayName.length() > LONGEST_DISPLAY_NAME) {
            problems.add(new AccountProblem(
                    Field.DISPLAY_NAME, "Give a name of 1 to " + LONGEST_DISPLAY_NAME + " letters."));
        }
        PasswordRule.objection(account.password(), username)
                .ifPresent(objection -> problems.add(new AccountProblem(Field.PASSWORD, objection)));
        if (account.scope() instanceof SiteScope.OnlySites(var names)) {
            if (names.isEmpty() && account.role() != Role.ADMINISTRATOR) {
                problems.add(new AccountProblem(Field.SITES, "Name at least one site, or choose all sites."));
            } else if (names.stream().anyMatch(name -> name.length() > LONGEST_SITE)) {
                problems.add(
                        new AccountProblem(Field.SITES, "A site's name has at most " + LONGEST_SITE + " letters."));
            }
        }
        return problems;
    }

    void store(NewAccount account, boolean demo, String actor) {
        String username = normalUsername(account.username());
        accounts.save(new UserAccount(
                username,
                account.displayName().strip(),
                hash(account.password()),
                account.role(),
                account.scope(),
                demo));
        auditTrail.recordAs(
                actor,
                AccountAction.ACCOUNT_ADDED,
                "account",
                username,
                "role " + account.role() + ", " + inWords(account.scope()));
    }

    /** The password as it is stored. */
    String hash(String password) {
        return Objects.requireNonNull(passwordEncoder.encode(password));
    }

    private static String inWords(SiteScope scope) {
        return switch (scope) {
            case SiteScope.AllSites() -> "all sites";
            case SiteScope.OnlySites(var names) ->
                "sites " + String.join(", ", names.stream().sorted().toList());
        };
    }
}
