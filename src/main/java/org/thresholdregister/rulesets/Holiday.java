package org.thresholdregister.rulesets;

import java.time.LocalDate;

/** A day besides weekends on which nobody works. */
public record Holiday(LocalDate day, String name) {

    /** The longest name that is kept, in characters. */
    public static final int LONGEST_NAME = 100;

    /** @throws IllegalArgumentException where the name is blank or longer than {@value #LONGEST_NAME} characters */
    public Holiday {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("a holiday has a name of at most " + LONGEST_NAME + " characters");
        }
    }
}
