package org.thresholdregister.shell;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.web.filter.OncePerRequestFilter;
import org.thresholdregister.platform.accounts.FirstSetUp;

/** Answers 404 for the set-up page once the register has accounts, before any page is made. */
@Configuration(proxyBeanMethods = false)
class SetUpGate {

    @Bean
    FilterRegistrationBean<OncePerRequestFilter> setUpGateFilter(FirstSetUp setUp) {
        var filter = new FilterRegistrationBean<OncePerRequestFilter>(new OncePerRequestFilter() {
            @Override
            protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
                    throws ServletException, IOException {
                if (setUp.isOpen()) {
                    chain.doFilter(request, response);
                } else {
                    response.sendError(HttpServletResponse.SC_NOT_FOUND);
                }
            }
        });
        filter.addUrlPatterns("/setup", "/setup/*");
        filter.setOrder(Ordered.HIGHEST_PRECEDENCE + 100);
        return filter;
    }
}
