package org.thresholdregister.platform.accounts;

import java.util.List;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.storage.StartRefusedException;

/**
 * The three sign-ins of the demonstration, whose password is public. They are made only under the profile
 * {@value #PROFILE}, refuse to stand beside real accounts, and cannot sign in once the profile is gone.
 */
@Component
@Profile(DemoAccounts.PROFILE)
public class DemoAccounts implements ApplicationRunner {

    public static final String PROFILE = "demo";
    public static final String PASSWORD = "fernhollow-demo";
    public static final String NURSE = "nurse";
    public static final String SAFETY_OFFICER = "officer";
    public static final String PLANT_MANAGER = "manager";

    private static final List<NewAccount> ALL = List.of(
            new NewAccount(NURSE, "Demo nurse", PASSWORD, Role.NURSE, SiteScope.all()),
            new NewAccount(SAFETY_OFFICER, "Demo safety officer", PASSWORD, Role.SAFETY_OFFICER, SiteScope.all()),
            new NewAccount(PLANT_MANAGER, "Demo plant manager", PASSWORD, Role.PLANT_MANAGER, SiteScope.all()));

    private final UserAccountRepository accounts;
    private final AccountBook book;

    DemoAccounts(UserAccountRepository accounts, AccountBook book) {
        this.accounts = accounts;
        this.book = book;
    }

    @Override
    @Transactional
    public void run(ApplicationArguments arguments) {
        if (accounts.existsByDemo(false)) {
            throw new StartRefusedException("This register has accounts of its own, so the demonstration is not"
                    + " started on it. Name another folder with --data FOLDER. Nothing was changed.");
        }
        for (NewAccount account : ALL) {
            if (!accounts.existsByUsername(account.username())) {
                book.store(account, true, "(demonstration)");
            }
        }
    }
}
