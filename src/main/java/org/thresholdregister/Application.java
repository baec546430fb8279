package org.thresholdregister;

import org.jspecify.annotations.NullMarked;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;
import org.springframework.context.ConfigurableApplicationContext;
import org.thresholdregister.batch.RegisterCommand;
import org.thresholdregister.platform.storage.RegisterOpenElsewhereCheck;

/** Threshold Register: the web app over the register's data folder, and the batch commands beside it. */
@NullMarked
@SpringBootApplication
@ConfigurationPropertiesScan
public class Application {

    public static void main(String[] args) {
        int exitCode = RegisterCommand.commandLine()
                .addSubcommand(new ServeCommand())
                .addSubcommand(new DemoCommand())
                .execute(args);
        // A web app that started goes on running after this.
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }

    /**
     * Starts the web app; returns once it answers. Arguments are Spring's own, such as {@code --register.data=folder},
     * {@code --server.port=8080} and {@code --spring.profiles.active=demo}.
     */
    public static ConfigurableApplicationContext serve(String... args) {
        var application = new SpringApplication(Application.class);
        application.addInitializers(new RegisterOpenElsewhereCheck());
        return application.run(args);
    }
}
