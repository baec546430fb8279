package org.thresholdregister.platform.storage;

/** The program does not start, for a reason that its reader can do something about; the message is all there is. */
public final class StartRefusedException extends RuntimeException {

    public StartRefusedException(String message) {
        super(message);
    }
}
