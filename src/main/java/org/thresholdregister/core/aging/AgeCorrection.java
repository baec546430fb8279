package org.thresholdregister.core.aging;

/** Whether the optional allowance for aging is made, 29 CFR 1910.95(g)(10)(ii). */
public enum AgeCorrection {
    ON,
    OFF
}
