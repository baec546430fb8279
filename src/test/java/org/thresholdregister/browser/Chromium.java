package org.thresholdregister.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands tests the one browser of the test run. Where the machine has none, they are skipped and say why; under
 * {@code CI=true} they fail instead.
 */
public final class Chromium implements ExecutionCondition, ParameterResolver {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable");

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        if (executable(System.getenv()).isPresent() || isRequired(System.getenv())) {
            return ConditionEvaluationResult.enabled("a browser is here, or has to be");
        }
        return ConditionEvaluationResult.disabled(
                "no Chromium or Chrome on the PATH; REGISTER_BROWSER may name one elsewhere");
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(ExtensionContext.Namespace.create(Chromium.class))
                .computeIfAbsent(Running.class, _ -> Running.launch(), Running.class)
                .browser();
    }

    static Optional<Path> executable(Map<String, String> environment) {
        String named = environment.getOrDefault("REGISTER_BROWSER", "");
        if (!named.isEmpty()) {
            return Optional.of(Path.of(named));
        }
        return Arrays.stream(environment.getOrDefault("PATH", "").split(File.pathSeparator))
                .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    static boolean isRequired(Map<String, String> environment) {
        return "true".equals(environment.get("CI"));
    }

    /** The browser and its driver, closed by JUnit when the last test is done. */
    private record Running(Playwright playwright, Browser browser) implements AutoCloseable {

        private static final List<String> FLAGS = List.of(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                // Whatever slips past the watch on the pages still reaches nobody.
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1");

        static Running launch() {
            Path executable = executable(System.getenv())
                    .orElseThrow(() -> new IllegalStateException("the browser tests need Chromium on the PATH"));
            var playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            var options = new BrowserType.LaunchOptions()
                    .setExecutablePath(executable)
                    .setArgs(FLAGS);
            return new Running(playwright, playwright.chromium().launch(options));
        }

        @Override
        public void close() {
            browser.close();
            playwright.close();
        }
    }
}
