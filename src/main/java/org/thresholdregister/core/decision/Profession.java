package org.thresholdregister.core.decision;

/** Those in whose judgment a baseline is revised, 29 CFR 1910.95(g)(9). */
public enum Profession {
    AUDIOLOGIST("audiologist"),
    OTOLARYNGOLOGIST("otolaryngologist"),
    PHYSICIAN("physician");

    private final String word;

    Profession(String word) {
        this.word = word;
    }

    /** The word used in records and sentences. */
    public String word() {
        return word;
    }
}
