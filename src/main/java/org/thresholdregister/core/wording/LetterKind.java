package org.thresholdregister.core.wording;

/** What a letter is about. */
public enum LetterKind {
    /** After every test: what was found, and what happens next. */
    RESULT("result"),
    /** The written notice that a rule set asks for, 29 CFR 1910.95(g)(8)(i) and its like. */
    SHIFT_NOTICE("shift-notice"),
    RETEST_INVITATION("retest-invitation"),
    /** To an audiologist or a physician, with what 29 CFR 1910.95(g)(7)(iii) says they are given. */
    REFERRAL("referral"),
    /** A professional has chosen another test as the baseline. */
    BASELINE_REVISION("baseline-revision"),
    /** A professional has found the loss not work-related. */
    NOT_WORK_RELATED("not-work-related");

    private final String word;

    LetterKind(String word) {
        this.word = word;
    }

    /** The word used in addresses and files. */
    public String word() {
        return word;
    }

    /** Whether it goes to the worker; the referral goes to a professional, and holds clinical notes. */
    public boolean isForTheWorker() {
        return this != REFERRAL;
    }
}
