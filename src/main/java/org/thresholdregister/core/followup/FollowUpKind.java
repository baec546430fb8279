package org.thresholdregister.core.followup;

import org.thresholdregister.core.rules.Step;

/** What may be owed to a worker. */
public enum FollowUpKind {
    /** The last day on which a retest may take the test's place. The retest is the employer's choice. */
    RETEST("retest", Step.RETEST),
    /** Written notice of a shift. */
    NOTICE("notice", Step.NOTICE),
    /** Entry of a recordable case on the injury log. */
    RECORD("record", Step.RECORDING_DEADLINE),
    ANNUAL_TEST("annual-test", Step.PERIODIC_TEST),
    BASELINE_TEST("baseline-test", Step.BASELINE);

    private final String word;
    private final Step step;

    FollowUpKind(String word, Step step) {
        this.word = word;
        this.step = step;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    /** The step of judging whose paragraph makes it due. */
    public Step step() {
        return step;
    }
}
