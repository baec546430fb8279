package org.thresholdregister.platform.security;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.CredentialsContainer;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;

/** The account that a session belongs to, as it was when the person signed in. */
public final class SignedInUser implements UserDetails, CredentialsContainer {

    private final String username;
    private final String displayName;
    private final Role role;
    private final SiteScope scope;
    private final boolean enabled;
    private final boolean locked;
    private @Nullable String passwordHash;

    public SignedInUser(
            String username,
            String displayName,
            String passwordHash,
            Role role,
            SiteScope scope,
            boolean enabled,
            boolean locked) {
        this.username = username;
        this.displayName = displayName;
        this.passwordHash = passwordHash;
        this.role = role;
        this.scope = scope;
        this.enabled = enabled;
        this.locked = locked;
    }

    @Override
    public String getUsername() {
        return username;
    }

    public String displayName() {
        return displayName;
    }

    public Role role() {
        return role;
    }

    public SiteScope scope() {
        return scope;
    }

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return List.of(new SimpleGrantedAuthority("ROLE_" + role.name()));
    }

    /** The stored hash; null once the password has been checked. */
    @Override
    public @Nullable String getPassword() {
        return passwordHash;
    }

    @Override
    public boolean isEnabled() {
        return enabled;
    }

    @Override
    public boolean isAccountNonLocked() {
        return !locked;
    }

    @Override
    public void eraseCredentials() {
        passwordHash = null;
    }

    @Override
    public String toString() {
        return username;
    }
}
