package org.thresholdregister.platform.storage;

import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The embedded database in the data folder, unless {@code spring.datasource.url} names another. */
@Configuration(proxyBeanMethods = false)
class StorageConfiguration {

    @Bean
    @ConditionalOnProperty(name = "spring.datasource.url", matchIfMissing = true, havingValue = "none")
    JdbcConnectionDetails embeddedDatabase(RegisterProperties properties) {
        DataFolder.prepare(properties.data());
        String url = RegisterDatabase.url(properties.data());
        return new JdbcConnectionDetails() {
            @Override
            public String getUsername() {
                return RegisterDatabase.USER;
            }

            @Override
            public String getPassword() {
                return RegisterDatabase.PASSWORD;
            }

            @Override
            public String getJdbcUrl() {
                return url;
            }
        };
    }
}
