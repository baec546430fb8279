package org.thresholdregister.platform.accounts;

import java.time.InstantSource;
import org.springframework.core.env.Environment;
import org.springframework.core.env.Profiles;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds the account for a sign-in. Demonstration accounts are disabled outside the demonstration. */
@Service
class AccountUserDetailsService implements UserDetailsService {

    private final UserAccountRepository accounts;
    private final boolean demo;
    private final InstantSource systemTime = InstantSource.system();

    AccountUserDetailsService(UserAccountRepository accounts, Environment environment) {
        this.accounts = accounts;
        this.demo = environment.acceptsProfiles(Profiles.of(DemoAccounts.PROFILE));
    }

    @Override
    @Transactional(readOnly = true)
    public UserDetails loadUserByUsername(String typed) {
        return accounts.findByUsername(AccountBook.normalUsername(typed))
                .map(account -> account.toUser(demo, systemTime.instant()))
                .orElseThrow(() -> new UsernameNotFoundException("no such account"));
    }
}
