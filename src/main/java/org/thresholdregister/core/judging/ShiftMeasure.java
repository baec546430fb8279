package org.thresholdregister.core.judging;

import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.shift.ThresholdShift;

/** Measures a worker's shift between two audiograms, with the age allowance that the options call for. */
@FunctionalInterface
interface ShiftMeasure {
    ThresholdShift between(Ear ear, Audiogram earlier, Audiogram later);
}
