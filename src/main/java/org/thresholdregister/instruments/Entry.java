package org.thresholdregister.instruments;

import java.time.Instant;

/**
 * Something on record as it stands now.
 *
 * @param key of the whole line of entries, by which other entries name it
 * @param reason why it was corrected last; empty where it never was
 * @param by account of whoever entered it
 */
public record Entry<F extends Facts>(long key, F facts, boolean corrected, String reason, String by, Instant at) {}
