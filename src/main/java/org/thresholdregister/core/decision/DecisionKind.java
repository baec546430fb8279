package org.thresholdregister.core.decision;

/** What a person decided about a test of one or both ears, or did because of it. */
public enum DecisionKind {
    /** A physician or other licensed professional found the loss not work-related, 29 CFR 1904.10(b)(6). */
    NOT_WORK_RELATED("not-work-related"),
    /** The loss was found, or presumed, work-related. */
    WORK_RELATED("work-related"),
    /** The case stands on the injury log. */
    RECORDED("recorded"),
    /** The entry on the log was lined out, 29 CFR 1904.10(b)(4). */
    LINED_OUT("lined-out"),
    /** The worker has been told in writing, 29 CFR 1910.95(g)(8)(i). */
    NOTICE_GIVEN("notice-given"),
    /** This test becomes the ear's baseline for the tests after it, 29 CFR 1910.95(g)(9). */
    BASELINE("baseline"),
    /** This test was proposed as the ear's baseline, and a professional declined: the baseline stays what it is. */
    BASELINE_KEPT("baseline-kept"),
    /** The test is kept and shown, never judged. */
    INVALID_TEST("invalid-test"),
    /** A retest is booked, 29 CFR 1910.95(g)(7)(ii). The day is that of the booking; no determination changes by it. */
    RETEST_BOOKED("retest-booked"),
    /** Protectors were fitted or refitted, 29 CFR 1910.95(g)(8)(ii)(A) and (B); no determination changes by it. */
    PROTECTOR_REFITTED("protector-refitted"),
    /**
     * The worker was trained, or trained again, in the use and care of protectors, 29 CFR 1910.95(g)(8)(ii)(A) and (B);
     * no determination changes by it.
     */
    TRAINED("trained"),
    /**
     * The worker was referred for an audiological evaluation or an examination of the ears, or told of the need for
     * one, 29 CFR 1910.95(g)(8)(ii)(C) and (D); no determination changes by it.
     */
    REFERRED("referred");

    private final String word;

    DecisionKind(String word) {
        this.word = word;
    }

    /**
     * Whether it changes for good what the record means, so that it is not taken down without its reason: a rule of
     * this program's own. Decisions made elsewhere are taken in as they come.
     */
    public boolean needsReason() {
        return switch (this) {
            case NOT_WORK_RELATED, LINED_OUT, BASELINE, BASELINE_KEPT, INVALID_TEST -> true;
            case WORK_RELATED, RECORDED, NOTICE_GIVEN, RETEST_BOOKED, PROTECTOR_REFITTED, TRAINED, REFERRED -> false;
        };
    }

    /** Whether it may change which tests are compared, and with what. */
    public boolean changesComparisons() {
        return switch (this) {
            case BASELINE, INVALID_TEST -> true;
            case NOT_WORK_RELATED,
                    WORK_RELATED,
                    RECORDED,
                    LINED_OUT,
                    NOTICE_GIVEN,
                    BASELINE_KEPT,
                    RETEST_BOOKED,
                    PROTECTOR_REFITTED,
                    TRAINED,
                    REFERRED -> false;
        };
    }

    /** The word used in files and sentences. */
    public String word() {
        return word;
    }
}
