package org.thresholdregister.intake;

/** What came of confirming an import. Only {@link Stored} has changed the register. */
public sealed interface ImportResult {

    record Stored(ImportCounts counts) implements ImportResult {}

    /** It was stopped before its end, and nothing was stored. */
    record Cancelled() implements ImportResult {}

    /** The register is not what it was at the preview, and the files would do something else: look again. */
    record RegisterChanged(ImportPreview preview) implements ImportResult {}

    /** The preview is not waiting any more: it was confirmed, given up or waited too long. */
    record Expired() implements ImportResult {}
}
