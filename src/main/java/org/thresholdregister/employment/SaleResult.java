package org.thresholdregister.employment;

/** What came of a sale or a handing over. */
public sealed interface SaleResult {

    record Done(int workers) implements SaleResult {}

    /** The register has changed since the preview was shown. Nothing was changed. */
    record PreviewOutdated() implements SaleResult {}

    record Refused(Reason reason) implements SaleResult {}

    /** Why nothing was changed. */
    enum Reason {
        SITE_NOT_OPEN,
        NOBODY_THERE,
        SUCCESSOR_MISSING,
        RECEIVER_MISSING,
        TEXT_TOO_LONG,
        IN_THE_FUTURE,
        SOMEONE_HELD,
        DONE_ALREADY
    }
}
