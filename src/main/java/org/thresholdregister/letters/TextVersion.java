package org.thresholdregister.letters;

import java.time.Instant;

/**
 * A text as a site once saved it.
 *
 * @param content empty where the site went back to the standard text
 * @param savedBy account of whoever saved it
 */
public record TextVersion(String content, String savedBy, Instant savedAt) {}
