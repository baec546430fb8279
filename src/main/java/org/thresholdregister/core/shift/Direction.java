package org.thresholdregister.core.shift;

/** Which way hearing has to change for a rule to speak. */
public enum Direction {
    WORSE,
    BETTER
}
