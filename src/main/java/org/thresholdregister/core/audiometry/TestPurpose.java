package org.thresholdregister.core.audiometry;

/** Why a test was made. The order is the one in which tests of one day are judged. */
public enum TestPurpose {
    BASELINE("baseline"),
    ANNUAL("annual"),
    /** At the end of employment or of noise exposure; judged like an annual test. */
    EXIT("exit"),
    RETEST("retest"),
    /** Kept and shown, never judged. */
    OTHER("other");

    private final String word;

    TestPurpose(String word) {
        this.word = word;
    }

    /** The word used in files and sentences. */
    public String word() {
        return word;
    }

    public boolean isJudged() {
        return this != OTHER;
    }
}
