package org.thresholdregister.testdays;

import java.util.Optional;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.SignedInUser;

/** Knows who may sign in, with role and sites as they are now. */
@Component
class AccountFinder {

    private final UserDetailsService accounts;

    AccountFinder(UserDetailsService accounts) {
        this.accounts = accounts;
    }

    /** Empty where there is no such account, or it is closed. An account not found would end the caller's transaction. */
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    Optional<SignedInUser> find(String username) {
        try {
            return accounts.loadUserByUsername(username) instanceof SignedInUser user && user.isEnabled()
                    ? Optional.of(user)
                    : Optional.empty();
        } catch (UsernameNotFoundException unknown) {
            return Optional.empty();
        }
    }
}
