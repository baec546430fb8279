package org.thresholdregister.platform.security;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Set;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.test.context.support.WithSecurityContext;
import org.springframework.security.test.context.support.WithSecurityContextFactory;

/** Runs a test as a signed-in user of a role, with all sites or the named ones. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@WithSecurityContext(factory = WithRegisterUser.Factory.class)
public @interface WithRegisterUser {

    Role role();

    String username() default "tester";

    /** The sites in scope; none named means all sites. */
    String[] sites() default {};

    /** Makes the security context, for a whole test or as a test goes on. */
    class Factory implements WithSecurityContextFactory<WithRegisterUser> {
        @Override
        public SecurityContext createSecurityContext(WithRegisterUser annotation) {
            var scope = annotation.sites().length == 0 ? SiteScope.all() : SiteScope.only(Set.of(annotation.sites()));
            return context(annotation.username(), annotation.role(), scope);
        }

        public static SecurityContext context(String username, Role role, SiteScope scope) {
            var user = new SignedInUser(username, "Test user", "", role, scope, true, false);
            var context = SecurityContextHolder.createEmptyContext();
            context.setAuthentication(
                    UsernamePasswordAuthenticationToken.authenticated(user, null, user.getAuthorities()));
            return context;
        }
    }
}
