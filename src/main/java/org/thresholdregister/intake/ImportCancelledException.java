package org.thresholdregister.intake;

/** Unwinds an import that a person has stopped, so that its transaction leaves nothing behind. */
final class ImportCancelledException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    ImportCancelledException() {
        super("the import was stopped", null, false, false);
    }
}
