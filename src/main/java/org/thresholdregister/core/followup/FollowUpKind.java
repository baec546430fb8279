package org.thresholdregister.core.followup;

import org.thresholdregister.core.regulation.Citation;

/** What may be owed to a worker. */
public enum FollowUpKind {
    /** The last day on which a retest may take the test's place. The retest is the employer's choice. */
    RETEST("retest", Citation.RETEST),
    /** Written notice of a shift. */
    NOTICE("notice", Citation.NOTICE),
    /** Entry of a recordable case on the injury log. */
    RECORD("record", Citation.RECORDING_RETEST),
    ANNUAL_TEST("annual-test", Citation.ANNUAL_TEST),
    BASELINE_TEST("baseline-test", Citation.BASELINE);

    private final String word;
    private final Citation basis;

    FollowUpKind(String word, Citation basis) {
        this.word = word;
        this.basis = basis;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    /** The paragraph that makes it due. */
    public Citation basis() {
        return basis;
    }
}
