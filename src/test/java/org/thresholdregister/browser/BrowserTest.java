package org.thresholdregister.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.thresholdregister.platform.accounts.DemoAccounts;

/**
 * A test of the web app in the browser: the app runs as it does in a demonstration, with its accounts and on the sample
 * plant's own day, on a port and in a data folder of its own, and once for all tests that add nothing to its settings.
 */
@SpringBootTest(
        webEnvironment = WebEnvironment.RANDOM_PORT,
        properties = {"vaadin.productionMode=true", "register.today=2026-11-24"})
@ActiveProfiles("demo")
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

    /** Signs in with an account of the demonstration and waits for the first page of its role. */
    protected final void signInAs(String username) {
        open("/login");
        page().fill("#username", username);
        page().fill("#password", DemoAccounts.PASSWORD);
        page().click("button[type=submit]");
        page().waitForSelector("vaadin-app-layout");
    }
}
