package org.thresholdregister.drawing;

/** Which of the compared tests a value belongs to. */
public enum Series {
    /** The test that is looked at: the latest, or the year that a reader chose. */
    LATEST("latest"),
    /** The test that it is compared with. */
    BASELINE("baseline");

    private final String word;

    Series(String word) {
        this.word = word;
    }

    /** The word used in the drawing's {@code data-series}. */
    public String word() {
        return word;
    }
}
