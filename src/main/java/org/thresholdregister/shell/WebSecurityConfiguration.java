package org.thresholdregister.shell;

import com.vaadin.flow.spring.security.VaadinAwareSecurityContextHolderStrategy;
import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.config.ObjectPostProcessor;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.core.context.SecurityContextHolderStrategy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.CrossOriginResourcePolicyHeaderWriter.CrossOriginResourcePolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.StaticHeadersWriter;
import org.thresholdregister.platform.security.OpenSessions;

/** The rules at the door: everything asks for a sign-in, but for the style sheet, scripts and the sign-in itself. */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
class WebSecurityConfiguration {

    /** One for the process, as the holder it serves is: several applications in one, as tests have, share it. */
    private static final SecurityContextHolderStrategy WHO_IS_SIGNED_IN =
            new VaadinAwareSecurityContextHolderStrategy();

    @Bean
    static SecurityContextHolderStrategy securityContextHolderStrategy() {
        return WHO_IS_SIGNED_IN;
    }

    @Bean
    SecurityFilterChain filterChain(HttpSecurity http, OpenSessions openSessions) {
        http.authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                .permitAll()
                .requestMatchers("/js/**", "/lumo/**", "/styles.css", "/icon.svg", "/calendar/*.ics")
                .permitAll());
        http.headers(WebSecurityConfiguration::headers);
        http.sessionManagement(sessions -> sessions.addSessionAuthenticationStrategy(openSessions));
        http.with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin.loginView(LoginView.class, "/" + LoginView.PATH));
        http.exceptionHandling(handling -> handling.accessDeniedHandler(WebSecurityConfiguration::deny));
        return http.build();
    }

    /** An address that is no page of ours is not found; anything else that is denied here is a forged request. */
    private static void deny(HttpServletRequest request, HttpServletResponse response, AccessDeniedException denial)
            throws IOException {
        response.sendError(
                denial instanceof CsrfException ? HttpServletResponse.SC_FORBIDDEN : HttpServletResponse.SC_NOT_FOUND);
    }

    private static void headers(HeadersConfigurer<HttpSecurity> headers) {
        headers.contentSecurityPolicy(policy -> policy.policyDirectives(ContentSecurityPolicy.WITHOUT_INLINE_SCRIPTS));
        headers.referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN));
        headers.permissionsPolicyHeader(policy ->
                policy.policy("camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=(), midi=()"));
        headers.crossOriginOpenerPolicy(policy -> policy.policy(CrossOriginOpenerPolicy.SAME_ORIGIN));
        headers.crossOriginResourcePolicy(policy -> policy.policy(CrossOriginResourcePolicy.SAME_ORIGIN));
        // Static files of the framework set their own time to live over this.
        headers.cacheControl(HeadersConfigurer.CacheControlConfig::disable);
        headers.addHeaderWriter(new StaticHeadersWriter("Cache-Control", "no-store"));
        // The framework's servlet is reached by a forward, which commits the response past the later writing.
        headers.withObjectPostProcessor(new ObjectPostProcessor<HeaderWriterFilter>() {
            @Override
            public <O extends HeaderWriterFilter> O postProcess(O filter) {
                filter.setShouldWriteHeadersEagerly(true);
                return filter;
            }
        });
    }
}
