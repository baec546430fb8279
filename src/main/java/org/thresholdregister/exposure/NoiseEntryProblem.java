package org.thresholdregister.exposure;

/** Why something about noise was not taken down; nothing was changed then. */
public enum NoiseEntryProblem {
    /** The site is not among those of the user, or the roster has no such site. */
    UNKNOWN_SITE,
    /** Nobody at the site has this noise group, job title or number. */
    NOBODY_OF_THAT_NAME,
    IN_THE_FUTURE,
    /** Told before it was measured. */
    TOO_EARLY,
    TEXT_MISSING,
    TEXT_TOO_LONG,
    /** It was withdrawn before, or is not there for this user. */
    NOT_OPEN
}
