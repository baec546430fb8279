package org.thresholdregister.benchmark;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** The script, which times its own stages while it runs. */
final class PythonContender implements Contender {

    private final String version;

    PythonContender(String version) {
        this.version = version;
    }

    @Override
    public String name() {
        return version + " script";
    }

    @Override
    public Measurement measure(JudgingTask task, int repetitions) throws IOException, InterruptedException {
        List<ProcessRun> runs = new ArrayList<>();
        for (int i = 0; i < repetitions; i++) {
            runs.add(ProcessRun.of(PythonJudge.command(task), Map.of()));
        }
        return Measurement.of(
                StageTimes.medianOf(
                        runs.stream().map(run -> StageTimes.parse(run.output())).toList()),
                runs,
                OptionalLong.empty());
    }
}
