package org.thresholdregister.platform.storage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Refuses to start on a register that another process holds open, before anything else is set up, so that the person
 * who started it reads one sentence.
 */
public final class RegisterOpenElsewhereCheck implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final int H2_DATABASE_ALREADY_OPEN = 90020;

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        var environment = context.getEnvironment();
        if (environment.containsProperty("spring.datasource.url")) {
            return;
        }
        Path folder = Path.of(environment.getProperty("register.data", "register-data"));
        if (!Files.exists(RegisterDatabase.file(folder))) {
            return;
        }
        try {
            DriverManager.getConnection(RegisterDatabase.url(folder), RegisterDatabase.USER, RegisterDatabase.PASSWORD)
                    .close();
        } catch (SQLException e) {
            if (e.getErrorCode() == H2_DATABASE_ALREADY_OPEN) {
                throw new StartRefusedException("The register in "
                        + folder.toAbsolutePath().normalize()
                        + " is already open in another program. Close that one first, or name another folder with"
                        + " --data FOLDER. Nothing was changed.");
            }
            // Any other fault is the data source's to report, with its full cause.
        }
    }
}
