package org.thresholdregister.protection;

import org.thresholdregister.core.attenuation.AttenuationMethod;

/**
 * The method of estimating that a site's employer picked, 29 CFR 1910.95(j)(1).
 *
 * @param site empty for workers without one
 * @param reason why it was picked
 */
public record MethodChoice(String site, AttenuationMethod method, String reason) {

    public static final int LONGEST_REASON = 500;
}
