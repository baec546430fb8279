package org.thresholdregister.shell;

import java.security.SecureRandom;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Logs what went wrong under a reference that the person is shown. The log gets kinds and places, never messages:
 * messages quote values, and values are health data.
 */
@Component
class Incidents {

    private static final Logger LOG = LoggerFactory.getLogger(Incidents.class);
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private static final int LENGTH = 8;

    private final SecureRandom random = new SecureRandom();

    /** Logs the failure and returns its reference. */
    String log(Throwable failure) {
        String reference = random.ints(LENGTH, 0, LETTERS.length())
                .mapToObj(LETTERS::charAt)
                .collect(StringBuilder::new, StringBuilder::append, StringBuilder::append)
                .toString();
        LOG.error("Reference {}: {}", reference, withoutMessages(failure));
        return reference;
    }

    static String withoutMessages(Throwable failure) {
        var text = new StringBuilder();
        for (@Nullable Throwable cause = failure; cause != null; cause = cause.getCause()) {
            text.append(text.isEmpty() ? "" : "\ncaused by ")
                    .append(cause.getClass().getName());
            for (StackTraceElement frame : cause.getStackTrace()) {
                text.append("\n\tat ").append(frame);
            }
        }
        return text.toString();
    }
}
