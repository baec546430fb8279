package org.thresholdregister.core.audiometry;

/** One ear of a person. Every rule is applied to each ear by itself. */
public enum Ear {
    LEFT("left"),
    RIGHT("right");

    private final String word;

    Ear(String word) {
        this.word = word;
    }

    /** The word used in files and sentences. */
    public String word() {
        return word;
    }

    public Ear other() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
