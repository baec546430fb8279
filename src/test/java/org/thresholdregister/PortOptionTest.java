package org.thresholdregister;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.BindException;
import java.net.ServerSocket;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;

class PortOptionTest {

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final PrintStream out = new PrintStream(said, true, UTF_8);

    @Command
    private static final class Anything {
        @Mixin
        private PortOption port = new PortOption();
    }

    @Test
    void theUsualPortIs8080() {
        assertThat(parse().givenOrUsual()).isEqualTo(8080);
        assertThat(parse("--port", "9000").givenOrUsual()).isEqualTo(9000);
    }

    @Test
    void aTakenUsualPortGivesWayToTheNextFreeOne() throws IOException {
        try (var _ = heldByUsOrByAnother(8080)) {
            int port = parse().givenOrNextFree(out);

            assertThat(port).isBetween(8081, 8179);
            assertThat(said.toString(UTF_8)).isEqualToIgnoringNewLines("Port 8080 is taken; using " + port + ".");
        }
    }

    @Test
    void aGivenPortIsKeptEvenWhereItIsTaken() throws IOException {
        try (var taken = new ServerSocket(0)) {
            int port = taken.getLocalPort();

            assertThat(parse("--port", String.valueOf(port)).givenOrNextFree(out))
                    .isEqualTo(port);
            assertThat(said.toString(UTF_8)).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "65536", "web"})
    void whatIsNoPortIsBadUsage(String given) {
        assertThatThrownBy(() -> parse("--port=" + given))
                .isInstanceOf(ParameterException.class)
                .hasMessageContaining("--port")
                .hasMessageContaining(given);
    }

    private static PortOption parse(String... arguments) {
        var command = new Anything();
        new CommandLine(command).parseArgs(arguments);
        return command.port;
    }

    private static ServerSocket heldByUsOrByAnother(int port) throws IOException {
        try {
            return new ServerSocket(port);
        } catch (BindException takenAlready) {
            return new ServerSocket();
        }
    }
}
