package org.thresholdregister.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.file.Files;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.util.FileSystemUtils;

/**
 * A test in the whole application, on a register of its own in a temporary folder that goes when the tests end.
 * Put {@code @ActiveProfiles("demo")} beside it for the demonstration accounts, {@code @DirtiesContext} where a test
 * leaves something behind that others must not find.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Inherited
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ContextConfiguration(initializers = RegisterTest.TemporaryFolder.class)
public @interface RegisterTest {

    /** Points {@code register.data} at a fresh folder. */
    class TemporaryFolder implements ApplicationContextInitializer<ConfigurableApplicationContext> {
        @Override
        public void initialize(ConfigurableApplicationContext context) {
            try {
                var folder = Files.createTempDirectory("register-test");
                TestPropertyValues.of("register.data=" + folder.resolve("data")).applyTo(context);
                Runtime.getRuntime()
                        .addShutdownHook(new Thread(() -> FileSystemUtils.deleteRecursively(folder.toFile())));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
