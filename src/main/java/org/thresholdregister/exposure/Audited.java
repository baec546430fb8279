package org.thresholdregister.exposure;

import java.util.Locale;

/** What the audit trail says of places: a worker's number, never a name. */
final class Audited {

    private Audited() {}

    static String subject(NoiseSubject subject) {
        return subject.kind().name().toLowerCase(Locale.ROOT) + " " + subject.name() + " at "
                + (subject.site().isEmpty() ? "no site" : subject.site());
    }
}
