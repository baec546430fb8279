package org.thresholdregister.testing;

import java.util.List;

/**
 * What the page offers for the texts that say who made a test, and with what; anything else may be typed as well.
 */
public record Suggestions(
        List<String> testers, List<String> instruments, List<String> transducers, List<String> rooms) {}
