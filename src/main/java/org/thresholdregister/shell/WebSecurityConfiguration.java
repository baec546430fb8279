package org.thresholdregister.shell;

import com.vaadin.flow.spring.security.VaadinSecurityConfigurer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.thresholdregister.platform.security.OpenSessions;

/** The rules at the door: everything asks for a sign-in, but for the style sheet, scripts and the sign-in itself. */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
class WebSecurityConfiguration {

    @Bean
    SecurityFilterChain filterChain(HttpSecurity http, OpenSessions openSessions) throws Exception {
        http.authorizeHttpRequests(
                requests -> requests.requestMatchers("/js/**", "/styles.css", "/icon.svg", "/lumo/**")
                        .permitAll());
        http.sessionManagement(sessions -> sessions.addSessionAuthenticationStrategy(openSessions));
        http.with(VaadinSecurityConfigurer.vaadin(), vaadin -> vaadin.loginView(LoginView.class, "/" + LoginView.PATH));
        return http.build();
    }
}
