package org.thresholdregister.core.validity;

import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/** One frequency of an ear, on two tests. */
public record LevelChange(Frequency frequency, Threshold before, Threshold now) {}
