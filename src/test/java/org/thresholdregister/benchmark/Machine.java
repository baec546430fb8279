package org.thresholdregister.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the measuring ran on, as far as the system tells. */
final class Machine {

    private static final String NOT_KNOWN = "not known";

    private Machine() {}

    static String describe() {
        return processor() + ", " + Runtime.getRuntime().availableProcessors() + " cores, " + memory() + " of memory, "
                + System.getProperty("os.name") + " " + System.getProperty("os.version") + "; "
                + System.getProperty("java.vm.name") + " " + Runtime.version();
    }

    /** How many processes wanted to run, on average over the last minute. */
    static String load() {
        return first("/proc/loadavg", "^(\\S+)");
    }

    private static String processor() {
        return first("/proc/cpuinfo", "^model name\\s*:\\s*(.+)$");
    }

    private static String memory() {
        String kilobytes = first("/proc/meminfo", "^MemTotal:\\s*(\\d+) kB$");
        return kilobytes.equals(NOT_KNOWN)
                ? NOT_KNOWN
                : String.format(Locale.ROOT, "%.1f GiB", Long.parseLong(kilobytes) / 1048576.0);
    }

    private static String first(String file, String pattern) {
        try {
            Matcher found = Pattern.compile(pattern, Pattern.MULTILINE).matcher(Files.readString(Path.of(file)));
            return found.find() ? found.group(1) : NOT_KNOWN;
        } catch (IOException e) {
            return NOT_KNOWN;
        }
    }
}
