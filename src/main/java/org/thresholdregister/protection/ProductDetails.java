package org.thresholdregister.protection;

import java.util.Optional;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.ProtectorKind;

/**
 * A protector as a site gives it out.
 *
 * @param site empty where it is for workers without a site
 * @param sizes the sizes there are, as free text
 * @param pair the plug and the muff of which a dual one is made; empty for any other
 */
public record ProductDetails(
        String site, String name, ProtectorKind kind, String sizes, LabelValues label, Optional<Pair> pair) {

    public static final int LONGEST_NAME = 100;
    public static final int LONGEST_SIZES = 100;

    /** Two protectors by the register's own keys. */
    public record Pair(long plugKey, long muffKey) {}
}
