package org.thresholdregister.testing.ui;

import com.vaadin.flow.router.Location;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.platform.ui.Paths;

/** Addresses of the page on which a test is entered. */
final class TestAddress {

    private static final String IN_PLACE_OF = "in-place-of";

    private TestAddress() {}

    /** The page that corrects the test of this key, or enters a new one. */
    static String of(String workerId, Optional<Long> inPlaceOf) {
        return Paths.test(workerId)
                + inPlaceOf.map(key -> "?" + IN_PLACE_OF + "=" + key).orElse("");
    }

    /** The key of the test to correct; none where the address names none, and one of no test where it is no number. */
    static Optional<Long> inPlaceOf(Location location) {
        return location.getQueryParameters().getParameters().getOrDefault(IN_PLACE_OF, List.of()).stream()
                .findFirst()
                .map(text -> text.matches("\\d{1,18}") ? Long.valueOf(text) : Long.valueOf(-1));
    }
}
