package org.thresholdregister.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The command {@code ./register evaluate} itself, which writes its other files too. */
final class RegisterContender implements Contender {

    static final int HEAP_LIMIT_MEGABYTES = 256;

    private static final Pattern BEFORE_COLLECTION = Pattern.compile("Pause .* (\\d+)M->\\d+M\\(");
    private static final Pattern AT_EXIT =
            Pattern.compile("gc,exit\\s*](?!\\s*(?:Metaspace|class space)).* used (\\d+)K");

    @Override
    public String name() {
        return "Threshold Register";
    }

    @Override
    public Measurement measure(JudgingTask task, int repetitions) throws IOException, InterruptedException {
        // A relative path, since the launcher splits the options at blanks.
        Path log = Path.of("target/benchmark/heap.log");
        Map<String, String> options =
                Map.of("REGISTER_JAVA_OPTS", "-Xmx" + HEAP_LIMIT_MEGABYTES + "m -Xlog:gc,gc+exit:file=" + log);
        List<String> command = new ArrayList<>(List.of("./register", "evaluate"));
        command.addAll(task.withFolder().arguments());
        List<ProcessRun> runs = new ArrayList<>();
        long peakHeap = 0;
        for (int i = 0; i < repetitions; i++) {
            runs.add(ProcessRun.of(command, options));
            peakHeap = Math.max(peakHeap, peakHeapBytes(Files.readString(log)));
        }
        StageTimes stages =
                StageTimes.parse(ProcessRun.of(Jvm.command(RegisterStages.class, task.arguments()), Map.of())
                        .output());
        return Measurement.of(stages, runs, OptionalLong.of(peakHeap));
    }

    /** The heap is fullest before a collection, or at the end. */
    static long peakHeapBytes(String log) {
        long peak = 0;
        Matcher collections = BEFORE_COLLECTION.matcher(log);
        while (collections.find()) {
            peak = Math.max(peak, Long.parseLong(collections.group(1)) << 20);
        }
        long atExit = 0;
        Matcher generations = AT_EXIT.matcher(log);
        while (generations.find()) {
            atExit += Long.parseLong(generations.group(1)) << 10;
        }
        if (atExit == 0) {
            throw new IllegalStateException("the log does not say how full the heap was at the end");
        }
        return Math.max(peak, atExit);
    }
}
