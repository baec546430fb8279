package org.thresholdregister;

import java.io.IOException;
import java.io.PrintStream;
import java.net.ServerSocket;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The port that the web app answers on. */
@NullMarked
final class PortOption {

    private static final int USUAL = 8080;
    private static final int LAST_TRIED = 8179;

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    private @Nullable Integer given;

    @Option(names = "--port", paramLabel = "N", description = "Port to answer on, 1 to 65535. Unless given: 8080.")
    void set(int port) {
        if (port < 1 || port > 65535) {
            throw new ParameterException(
                    Objects.requireNonNull(command).commandLine(), "--port is 1 to 65535, not " + port);
        }
        given = port;
    }

    int givenOrUsual() {
        return given == null ? USUAL : given;
    }

    /** The port given, even where it is taken; else the first free one from the usual one on, said on {@code out}. */
    int givenOrNextFree(PrintStream out) {
        if (given != null) {
            return given;
        }
        int free = IntStream.rangeClosed(USUAL, LAST_TRIED)
                .filter(PortOption::isFree)
                .findFirst()
                .orElse(USUAL);
        if (free != USUAL) {
            out.println("Port " + USUAL + " is taken; using " + free + ".");
        }
        return free;
    }

    private static boolean isFree(int port) {
        try (var _ = new ServerSocket(port)) {
            return true;
        } catch (IOException taken) {
            return false;
        }
    }
}
