package org.thresholdregister.platform.storage;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.SpringBootExceptionReporter;

/** Says on the console, in place of a stack trace, why the program does not start. */
final class PlainStartupReport implements SpringBootExceptionReporter {

    @Override
    public boolean reportException(@Nullable Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof StartRefusedException) {
                System.err.println(cause.getMessage());
                return true;
            }
        }
        return false;
    }
}
