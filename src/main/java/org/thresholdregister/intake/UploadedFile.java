package org.thresholdregister.intake;

/**
 * A file that a person has handed over and that waits to be imported.
 *
 * @param id the name it is kept by, which says nothing of the file
 * @param name the file's name as it was given
 * @param sha256 of the bytes, in hexadecimal
 */
public record UploadedFile(String id, Table table, String name, String sha256) {}
