package org.thresholdregister;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.junit.jupiter.SpringExtension;
import org.springframework.test.context.support.TestPropertySourceUtils;
import org.thresholdregister.intake.TestImports;

/**
 * A test on the whole program over a register in a temporary folder. Each test starts with an empty register, on
 * {@link MovableClock#FIRST_DAY}, with nobody signed in. All such tests share one program.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@SpringBootTest
@ContextConfiguration(initializers = RegisterTest.TemporaryFolder.class)
@Import({RegisterTest.Beans.class, TestImports.class})
@ExtendWith(RegisterTest.StartEmpty.class)
public @interface RegisterTest {

    @TestConfiguration(proxyBeanMethods = false)
    class Beans {
        @Bean
        @Primary
        MovableClock movableClock() {
            return new MovableClock();
        }
    }

    class TemporaryFolder implements ApplicationContextInitializer<ConfigurableApplicationContext> {
        @Override
        public void initialize(ConfigurableApplicationContext context) {
            try {
                Path folder = Files.createTempDirectory("register-test");
                TestPropertySourceUtils.addInlinedPropertiesToEnvironment(
                        context, "register.data=" + folder.resolve("data"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    class StartEmpty implements BeforeEachCallback, AfterEachCallback {

        /** Accounts stay: each test signs in as it likes. */
        private static final String TABLES = """
                select table_name from information_schema.tables
                where table_schema = 'public' and table_type = 'BASE TABLE'
                  and table_name not in ('flyway_schema_history', 'user_account', 'user_account_site')""";

        @Override
        public void beforeEach(ExtensionContext test) {
            var context = SpringExtension.getApplicationContext(test);
            var jdbc = context.getBean(JdbcTemplate.class);
            List<String> tables = jdbc.queryForList(TABLES, String.class);
            jdbc.execute("set referential_integrity false");
            tables.forEach(table -> jdbc.update("delete from \"" + table + "\""));
            jdbc.execute("set referential_integrity true");
            context.getBean(MovableClock.class).moveTo(MovableClock.FIRST_DAY);
            SecurityContextHolder.clearContext();
        }

        @Override
        public void afterEach(ExtensionContext test) {
            SecurityContextHolder.clearContext();
        }
    }
}
