package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.attenuation.Worn;

/**
 * A protector in the catalogue.
 *
 * @param key the register's own key
 * @param worn what the estimates are made of
 * @param retiredOn the day from which it is given out no more
 * @param retiredReason why; empty while it is given out
 */
public record Product(
        long key, ProductDetails details, Worn worn, Optional<LocalDate> retiredOn, String retiredReason) {

    public boolean isGivenOut() {
        return retiredOn.isEmpty();
    }
}
