package org.thresholdregister.instruments;

import java.util.List;
import org.thresholdregister.core.calibration.Audiometer;

/**
 * What is on record at the user's sites, as it stands, each kind in the order in which it was entered.
 *
 * @param audiometers the units with their calibrations and checks, as the rules read them
 */
public record Holdings(
        List<Entry<Facts.Unit>> units,
        List<Audiometer> audiometers,
        List<Entry<Facts.Earphones>> headsets,
        List<Entry<Facts.CalibratedTo>> headsetUnits,
        List<Entry<Facts.Calibration>> calibrations,
        List<Entry<Facts.Check>> checks,
        List<Entry<Facts.Room>> rooms,
        List<Entry<Facts.Measurement>> measurements,
        List<Entry<Facts.Person>> testers,
        List<Entry<Facts.Certificate>> certificates) {}
