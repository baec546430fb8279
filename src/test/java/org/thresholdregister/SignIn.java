package org.thresholdregister;

import java.util.Set;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.platform.security.SiteScope;

/** Signs a test in. */
public final class SignIn {

    private SignIn() {}

    /** With all sites in scope. */
    public static void as(Role role) {
        as(role, SiteScope.all());
    }

    public static void as(Role role, String... sites) {
        as(role, SiteScope.only(Set.of(sites)));
    }

    private static void as(Role role, SiteScope scope) {
        as("test-" + role.name().toLowerCase(), role, scope);
    }

    public static void as(String username, Role role, SiteScope scope) {
        SignedInUser user = new SignedInUser(username, "Test", "", role, scope, true, false);
        SecurityContextHolder.getContext()
                .setAuthentication(
                        UsernamePasswordAuthenticationToken.authenticated(user, null, user.getAuthorities()));
    }

    public static void out() {
        SecurityContextHolder.clearContext();
    }
}
