package org.thresholdregister.benchmark;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A process that ran to its end.
 *
 * @param peakResidentBytes the most memory that it held, where the system tells; read every few milliseconds, so that
 *     what it took in the last of them may be missing
 */
record ProcessRun(double wallSeconds, OptionalLong peakResidentBytes, String output) {

    private static final int POLL_MILLISECONDS = 4;
    private static final Pattern PEAK = Pattern.compile("^VmHWM:\\s+(\\d+) kB$", Pattern.MULTILINE);

    /** @throws IllegalStateException if the process says that it failed; the message holds what it wrote */
    static ProcessRun of(List<String> command, Map<String, String> environment)
            throws IOException, InterruptedException {
        Path output = Files.createTempFile("benchmark", ".out");
        try {
            ProcessBuilder builder = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectInput(
                            ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                    .redirectOutput(output.toFile());
            builder.environment().putAll(environment);
            long began = System.nanoTime();
            Process process = builder.start();
            OptionalLong peak = OptionalLong.empty();
            while (!process.waitFor(POLL_MILLISECONDS, TimeUnit.MILLISECONDS)) {
                OptionalLong now = peakResidentBytes(process.pid());
                peak = now.isPresent() ? now : peak;
            }
            double wallSeconds = (System.nanoTime() - began) / 1e9;
            String said = Files.readString(output, StandardCharsets.UTF_8);
            if (process.exitValue() != 0) {
                throw new IllegalStateException(
                        "exit code " + process.exitValue() + " of " + String.join(" ", command) + "\n" + said);
            }
            return new ProcessRun(wallSeconds, peak, said);
        } finally {
            Files.delete(output);
        }
    }

    /** What a command says; nothing where it is not there or fails. */
    static Optional<String> tryToRun(String... command) {
        try {
            return Optional.of(of(List.of(command), Map.of()).output());
        } catch (IOException | IllegalStateException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private static OptionalLong peakResidentBytes(long process) {
        try {
            Matcher peak = PEAK.matcher(Files.readString(Path.of("/proc/" + process + "/status")));
            return peak.find() ? OptionalLong.of(Long.parseLong(peak.group(1)) * 1024) : OptionalLong.empty();
        } catch (IOException e) {
            return OptionalLong.empty();
        }
    }
}
