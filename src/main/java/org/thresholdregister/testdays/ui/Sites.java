package org.thresholdregister.testdays.ui;

import java.util.List;
import java.util.Optional;

/** Which site a form begins with. */
final class Sites {

    private Sites() {}

    /** The first that has a name, else the first. */
    static Optional<String> usual(List<String> sites) {
        return sites.stream()
                .filter(site -> !site.isEmpty())
                .findFirst()
                .or(() -> sites.stream().findFirst());
    }
}
