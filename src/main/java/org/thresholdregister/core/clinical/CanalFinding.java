package org.thresholdregister.core.clinical;

/** What the look into an ear shows. */
public enum CanalFinding {
    CLEAR("clear"),
    WAX_PARTIAL("wax-partial"),
    WAX_BLOCKED("wax-blocked"),
    DRUM_NOT_SEEN("drum-not-seen"),
    RED("red"),
    DISCHARGE("discharge"),
    PERFORATION("perforation"),
    OTHER("other");

    private final String word;

    CanalFinding(String word) {
        this.word = word;
    }

    /** The word used in the database. */
    public String word() {
        return word;
    }
}
