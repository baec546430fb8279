package org.thresholdregister.benchmark;

import java.util.List;
import java.util.OptionalLong;

/**
 * What one contender took for one size.
 *
 * @param wholeSeconds from the start of its process to the end, the median of the repetitions
 * @param peakResidentBytes the most memory that any of these processes held
 * @param peakHeapBytes the most of Java's heap that any of them filled; none for those whose work is done elsewhere
 */
record Measurement(StageTimes stages, double wholeSeconds, OptionalLong peakResidentBytes, OptionalLong peakHeapBytes) {

    static Measurement of(StageTimes stages, List<ProcessRun> runs, OptionalLong peakHeapBytes) {
        return new Measurement(
                stages,
                Median.of(runs.stream().map(ProcessRun::wallSeconds).toList()),
                runs.stream()
                        .flatMapToLong(run -> run.peakResidentBytes().stream())
                        .max(),
                peakHeapBytes);
    }
}
