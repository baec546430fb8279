package org.thresholdregister.core.programme;

/** What the ranges of a percentage call it. */
public enum Rating {
    ACCEPTABLE("acceptable"),
    MARGINAL("marginal"),
    UNACCEPTABLE("unacceptable");

    private final String word;

    Rating(String word) {
        this.word = word;
    }

    /** The word used in files and sentences. */
    public String word() {
        return word;
    }
}
