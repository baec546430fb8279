package org.thresholdregister.intake;

import java.io.IOException;

/** The file is larger than what is taken; nothing of it was kept. The message is for the user. */
public final class UploadTooLargeException extends IOException {

    private static final long serialVersionUID = 1L;

    UploadTooLargeException(String name) {
        super(words(name));
    }

    /** What a person is told of a file that is larger than what is taken. */
    public static String words(String fileName) {
        return fileName + " is larger than " + UploadFolder.MOST_BYTES / (1 << 20)
                + " MB. Split it, and import the roster first.";
    }
}
