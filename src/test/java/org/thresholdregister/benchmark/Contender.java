package org.thresholdregister.benchmark;

import java.io.IOException;

/** One of those that judge the same files. */
interface Contender {

    String name();

    /** Judges the files as a user would, once for each repetition, and its stages apart. */
    Measurement measure(JudgingTask task, int repetitions) throws IOException, InterruptedException;
}
