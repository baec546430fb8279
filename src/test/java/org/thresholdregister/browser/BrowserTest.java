package org.thresholdregister.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/**
 * A test of the web app in the browser: the app runs as it does for users, on a port and in a data folder of its own,
 * and once for all tests that add nothing to its settings.
 */
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT, properties = "vaadin.productionMode=true")
public abstract class BrowserTest extends ChromiumTest {

    @LocalServerPort
    private int port;

    @DynamicPropertySource
    static void ownDataFolder(DynamicPropertyRegistry settings) throws IOException {
        Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target", "test-data")), "browser");
        settings.add("register.data", folder::toAbsolutePath);
    }

    @Override
    protected final String address() {
        return "http://localhost:" + port;
    }
}
