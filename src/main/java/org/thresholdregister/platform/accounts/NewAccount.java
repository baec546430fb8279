package org.thresholdregister.platform.accounts;

import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

/** What is asked for when an account is added; not yet checked. */
public record NewAccount(String username, String displayName, String password, Role role, SiteScope scope) {

    /** Without the password. */
    @Override
    public String toString() {
        return "NewAccount[" + username + ", " + role + "]";
    }
}
