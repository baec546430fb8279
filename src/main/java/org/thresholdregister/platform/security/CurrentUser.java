package org.thresholdregister.platform.security;

import java.util.Optional;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** The person on whose behalf the current thread works. */
@Component
public class CurrentUser {

    /** The signed-in user, or empty where nobody is signed in. */
    public Optional<SignedInUser> find() {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedInUser user
                ? Optional.of(user)
                : Optional.empty();
    }

    /**
     * The signed-in user.
     *
     * @throws AuthenticationCredentialsNotFoundException where nobody is signed in
     */
    public SignedInUser get() {
        return find().orElseThrow(() -> new AuthenticationCredentialsNotFoundException("nobody is signed in"));
    }

    public String username() {
        return get().getUsername();
    }

    public Role role() {
        return get().role();
    }

    /** The sites whose records this person may see. */
    public SiteScope scope() {
        return get().scope();
    }
}
