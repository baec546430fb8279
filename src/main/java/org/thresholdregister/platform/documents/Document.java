package org.thresholdregister.platform.documents;

import java.time.Instant;

/**
 * A file that is kept.
 *
 * @param key by which records name it
 * @param name as the file was called, without any folder
 * @param storedBy account of whoever stored it
 */
public record Document(long key, String name, MediaType type, int bytes, Instant storedAt, String storedBy) {}
