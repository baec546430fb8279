package org.thresholdregister.exposure;

import java.io.Serializable;

/**
 * Whom or what a measurement stands for at a site.
 *
 * @param site as spelled in the roster; empty where none is given
 * @param name of the noise group, the job or the area; the number of the worker
 */
public record NoiseSubject(Kind kind, String site, String name) implements Serializable {

    /** The longest site or name that is kept, in characters. */
    public static final int LONGEST_NAME = 200;

    /** What a measurement stands for, from the general to the particular. */
    public enum Kind {
        /** A place, whoever is in it; it says nothing of anybody's day. */
        AREA,
        /** Everybody with this job title. */
        JOB,
        /** Everybody of this noise group of the roster. */
        GROUP,
        /** One worker. */
        WORKER
    }

    /** @throws IllegalArgumentException where a text is blank or too long */
    public NoiseSubject {
        if (name.isBlank() || name.length() > LONGEST_NAME || site.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("a subject has a name of at most " + LONGEST_NAME + " characters");
        }
    }
}
