package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RegisterCommandTest {

    private final StringWriter output = new StringWriter();
    private final StringWriter errors = new StringWriter();

    @ParameterizedTest
    @ValueSource(strings = {"version", "--version"})
    void theVersionIsShown(String argument) {
        assertThat(execute(argument)).isZero();
        assertThat(output.toString()).startsWith("Threshold Register ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"help", "--help"})
    void helpListsTheCommands(String argument) {
        assertThat(execute(argument)).isZero();
        assertThat(output.toString()).contains("Usage: register", "version");
    }

    @Test
    void noCommandIsBadUsage() {
        assertThat(execute()).isEqualTo(2);
        assertThat(output.toString()).isEmpty();
        assertThat(errors.toString()).contains("Usage: register");
    }

    @ParameterizedTest
    @ValueSource(strings = {"unheard-of", "--unheard-of"})
    void anUnknownCommandOrOptionIsBadUsage(String argument) {
        assertThat(execute(argument)).isEqualTo(2);
        assertThat(output.toString()).isEmpty();
        assertThat(errors.toString()).contains("unheard-of");
    }

    private int execute(String... arguments) {
        return RegisterCommand.commandLine()
                .setOut(new PrintWriter(output, true))
                .setErr(new PrintWriter(errors, true))
                .execute(arguments);
    }
}
