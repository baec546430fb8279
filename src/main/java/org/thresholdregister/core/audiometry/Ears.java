package org.thresholdregister.core.audiometry;

/** One ear or both, where a decision or a duty may concern either. */
public enum Ears {
    LEFT("left"),
    RIGHT("right"),
    BOTH("both");

    private final String word;

    Ears(String word) {
        this.word = word;
    }

    /** The word used in files and sentences. */
    public String word() {
        return word;
    }

    public static Ears of(Ear ear) {
        return ear == Ear.LEFT ? LEFT : RIGHT;
    }

    public boolean include(Ear ear) {
        return this == BOTH || this == of(ear);
    }

    public Ears and(Ear ear) {
        return include(ear) ? this : BOTH;
    }
}
