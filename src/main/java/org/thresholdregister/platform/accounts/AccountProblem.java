package org.thresholdregister.platform.accounts;

/** Why an account is not stored as asked for, in words for the field it concerns. */
public record AccountProblem(Field field, String message) {

    /** The part of the form that a problem belongs to. */
    public enum Field {
        SET_UP_TOKEN,
        USERNAME,
        DISPLAY_NAME,
        PASSWORD,
        SITES
    }
}
