package org.thresholdregister.platform.storage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.support.GenericApplicationContext;

class RegisterOpenElsewhereTest {

    @TempDir
    Path folder;

    /** Another process, since H2 shares a file within one. */
    private Process openElsewhere() throws IOException, InterruptedException {
        var process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Holder.class.getName(),
                        RegisterDatabase.url(folder))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int first = process.getInputStream().read();
        assertThat(first).as("the other process has opened the register").isEqualTo('o');
        return process;
    }

    /** Opens the register and holds it until its input ends. */
    static final class Holder {
        public static void main(String[] args) throws Exception {
            try (var connection =
                    DriverManager.getConnection(args[0], RegisterDatabase.USER, RegisterDatabase.PASSWORD)) {
                System.out.print('o');
                System.out.flush();
                while (System.in.read() >= 0) {
                    // Waits for the end of the input.
                }
                connection.createStatement().execute("shutdown");
            }
        }
    }

    private GenericApplicationContext context() {
        var context = new GenericApplicationContext();
        TestPropertyValues.of("register.data=" + folder).applyTo(context.getEnvironment());
        return context;
    }

    @Test
    void aRegisterOpenInAnotherProcessIsRefusedInOneSentence() throws Exception {
        var process = openElsewhere();
        try {
            assertThatThrownBy(() -> new RegisterOpenElsewhereCheck().initialize(context()))
                    .isInstanceOf(StartRefusedException.class)
                    .hasMessageContaining(folder.toString())
                    .hasMessageContaining("already open");
        } finally {
            process.getOutputStream().close();
            process.waitFor(20, TimeUnit.SECONDS);
        }
        assertThatCode(() -> new RegisterOpenElsewhereCheck().initialize(context()))
                .doesNotThrowAnyException();
    }

    @Test
    void aNewRegisterIsNotMadeByTheCheck() {
        new RegisterOpenElsewhereCheck().initialize(context());
        assertThat(Files.exists(RegisterDatabase.file(folder))).isFalse();
    }

    @Test
    void theRefusalIsPrintedWithoutAStackTrace() {
        var printed = new ByteArrayOutputStream();
        PrintStream before = System.err;
        System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try {
            boolean told = new PlainStartupReport()
                    .reportException(new IllegalStateException(new StartRefusedException("It is open elsewhere.")));
            assertThat(told).isTrue();
            assertThat(new PlainStartupReport().reportException(new IllegalStateException("other")))
                    .isFalse();
        } finally {
            System.setErr(before);
        }
        assertThat(printed.toString(StandardCharsets.UTF_8))
                .isEqualTo("It is open elsewhere." + System.lineSeparator());
    }
}
