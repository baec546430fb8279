package org.thresholdregister.benchmark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Starts programs of this class path on this JDK. */
final class Jvm {

    private Jvm() {}

    static List<String> command(Class<?> program, List<String> arguments, String... more) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path"),
                program.getName()));
        command.addAll(arguments);
        command.addAll(List.of(more));
        return command;
    }
}
