package org.thresholdregister.core.meaning.referral;

/** A referral criterion of the AAO-HNS that no audiogram answers: somebody has to look, or to ask the worker. */
public enum ReferralQuestion {
    /** The reviewer's judgement of the curve. */
    UNUSUAL_CURVE(Kind.REVIEW),
    /** Variable or inconsistent responses, in the reviewer's judgement. */
    INCONSISTENT_RESPONSES(Kind.REVIEW),
    EAR_PAIN(Kind.HISTORY),
    DRAINAGE(Kind.HISTORY),
    DIZZINESS(Kind.HISTORY),
    SEVERE_PERSISTENT_TINNITUS(Kind.HISTORY),
    SUDDEN_FLUCTUATING_OR_RAPID_LOSS(Kind.HISTORY),
    FULLNESS_OR_DISCOMFORT(Kind.HISTORY),
    WAX_OR_FOREIGN_BODY(Kind.EAR_EXAMINATION);

    private final Kind kind;

    ReferralQuestion(Kind kind) {
        this.kind = kind;
    }

    /** Where the answer comes from. */
    public enum Kind {
        /** A professional's look at the audiogram. */
        REVIEW,
        /** The worker, for the last twelve months. */
        HISTORY,
        /** A look into the ear. */
        EAR_EXAMINATION
    }

    public Kind kind() {
        return kind;
    }
}
