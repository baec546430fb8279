package org.thresholdregister.platform.accounts;

import java.util.Map;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.authorization.AuthorizationEventPublisher;
import org.springframework.security.authorization.SpringAuthorizationEventPublisher;
import org.springframework.security.config.annotation.method.configuration.EnableMethodSecurity;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.DelegatingPasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/** How passwords are kept, and that services check roles. */
@Configuration(proxyBeanMethods = false)
@EnableMethodSecurity
class AccountsConfiguration {

    private static final String ARGON2 = "argon2";

    @Bean
    static PasswordEncoder passwordEncoder() {
        return new NormalizingPasswordEncoder(new DelegatingPasswordEncoder(
                ARGON2, Map.of(ARGON2, Argon2PasswordEncoder.defaultsForSpringSecurity_v5_8())));
    }

    /** Makes refusals known, for the audit trail. */
    @Bean
    static AuthorizationEventPublisher authorizationEventPublisher(ApplicationEventPublisher events) {
        return new SpringAuthorizationEventPublisher(events);
    }
}
