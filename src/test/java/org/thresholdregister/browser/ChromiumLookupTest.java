package org.thresholdregister.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChromiumLookupTest {

    @TempDir
    private Path folder;

    @Test
    void theBrowserIsFoundOnThePath() throws IOException {
        Path browser = Files.createFile(folder.resolve("google-chrome"));
        String path = folder.resolve("missing") + File.pathSeparator + folder;

        assertThat(Chromium.executable(Map.of("PATH", path))).isEmpty();
        assertThat(browser.toFile().setExecutable(true)).isTrue();
        assertThat(Chromium.executable(Map.of("PATH", path))).contains(browser);
    }

    @Test
    void aNamedBrowserIsTakenAsItIs() {
        assertThat(Chromium.executable(Map.of("PATH", "", "REGISTER_BROWSER", "/somewhere/browser")))
                .contains(Path.of("/somewhere/browser"));
    }

    @Test
    void onlyAContinuousIntegrationRunRequiresABrowser() {
        assertThat(Chromium.isRequired(Map.of("CI", "true"))).isTrue();
        assertThat(Chromium.isRequired(Map.of())).isFalse();
    }
}
