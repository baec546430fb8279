package org.thresholdregister.core.clinical;

/**
 * A question of the short health and noise history that is asked at a hearing test (common practice: no paragraph of
 * 29 CFR 1910.95 lists them).
 */
public enum HealthQuestion {
    NOISY_JOBS("noisy-jobs", Group.NOISE),
    SHOOTING("shooting", Group.NOISE),
    LOUD_MUSIC("loud-music", Group.NOISE),
    POWER_TOOLS("power-tools", Group.NOISE),
    MILITARY_SERVICE("military-service", Group.NOISE),
    EAR_ILLNESS("ear-illness", Group.HEALTH),
    EAR_OPERATION("ear-operation", Group.HEALTH),
    HEAD_INJURY("head-injury", Group.HEALTH),
    HARMFUL_MEDICINES("harmful-medicines", Group.HEALTH),
    SOLVENTS("solvents", Group.HEALTH),
    FAMILY("family", Group.HEALTH),
    COLD("cold", Group.TODAY),
    RINGING("ringing", Group.TODAY),
    DIZZINESS("dizziness", Group.TODAY);

    /** What a question is about. */
    public enum Group {
        NOISE,
        HEALTH,
        /** How the person is today, which is asked each time anew. */
        TODAY
    }

    private final String word;
    private final Group group;

    HealthQuestion(String word, Group group) {
        this.word = word;
        this.group = group;
    }

    /** The word used in the database. */
    public String word() {
        return word;
    }

    public Group group() {
        return group;
    }

    /** Whether the last answer may be shown for confirmation. */
    public boolean lasts() {
        return group != Group.TODAY;
    }
}
