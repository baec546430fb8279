package org.thresholdregister.exposure;

/** How a worker was told the result of a measurement. */
public enum HowTold {
    LETTER,
    IN_PERSON,
    MEETING,
    E_MAIL
}
