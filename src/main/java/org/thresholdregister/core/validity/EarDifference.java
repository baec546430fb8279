package org.thresholdregister.core.validity;

import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/** One frequency of a test, in the worse ear and in the better. */
public record EarDifference(Frequency frequency, Threshold worse, Threshold better) {}
