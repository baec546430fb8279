package org.thresholdregister.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the stages of judging a file set took, in seconds. A process says it in three lines, such as {@code read 0.125}. */
public record StageTimes(double readSeconds, double judgeSeconds, double writeSeconds) {

    public static StageTimes ofNanoseconds(long read, long judge, long write) {
        return new StageTimes(read / 1e9, judge / 1e9, write / 1e9);
    }

    /** The middle of several runs, stage by stage. */
    static StageTimes medianOf(List<StageTimes> runs) {
        return new StageTimes(
                Median.of(runs.stream().map(StageTimes::readSeconds).toList()),
                Median.of(runs.stream().map(StageTimes::judgeSeconds).toList()),
                Median.of(runs.stream().map(StageTimes::writeSeconds).toList()));
    }

    static StageTimes parse(String output) {
        return new StageTimes(secondsOf("read", output), secondsOf("judge", output), secondsOf("write", output));
    }

    private static double secondsOf(String stage, String output) {
        Matcher line =
                Pattern.compile("^" + stage + " ([0-9.]+)$", Pattern.MULTILINE).matcher(output);
        if (!line.find()) {
            throw new IllegalStateException("no time for " + stage + " in: " + output);
        }
        return Double.parseDouble(line.group(1));
    }

    String lines() {
        return String.format(
                Locale.ROOT, "read %.4f%njudge %.4f%nwrite %.4f%n", readSeconds, judgeSeconds, writeSeconds);
    }
}
