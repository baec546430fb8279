package org.thresholdregister.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** The queries, in DuckDB inside a Java process of its own. */
final class SqlContender implements Contender {

    private final String version;

    SqlContender(String version) {
        this.version = version;
    }

    @Override
    public String name() {
        return "SQL on DuckDB " + version;
    }

    @Override
    public Measurement measure(JudgingTask task, int repetitions) throws IOException, InterruptedException {
        List<ProcessRun> runs = new ArrayList<>();
        for (int i = 0; i < repetitions; i++) {
            runs.add(ProcessRun.of(Jvm.command(SqlJudge.class, task.arguments()), Map.of()));
        }
        StageTimes stages =
                StageTimes.parse(ProcessRun.of(Jvm.command(SqlJudge.class, task.arguments(), SqlJudge.STAGES), Map.of())
                        .output());
        return Measurement.of(stages, runs, OptionalLong.empty());
    }
}
