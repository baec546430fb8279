package org.thresholdregister.intake;

/** What came of looking at files. */
public sealed interface PreviewResult {

    record Ready(ImportPreview preview) implements PreviewResult {}

    /** A file as a whole cannot be read; the message names it and says what to mend. */
    record Unusable(String message) implements PreviewResult {}
}
