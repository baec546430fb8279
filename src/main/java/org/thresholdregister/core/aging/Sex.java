package org.thresholdregister.core.aging;

/** The two columns of the published age tables; no other table is published. */
public enum Sex {
    FEMALE("F"),
    MALE("M");

    private final String code;

    Sex(String code) {
        this.code = code;
    }

    /** The letter used in files. */
    public String code() {
        return code;
    }
}
