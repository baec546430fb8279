package org.thresholdregister.core.calibration;

import java.time.LocalDate;

/** With what, where and by whom a test was made, in the words of its record; empty where it does not say. */
public record TestSetting(LocalDate day, String instrument, String transducer, String room, String tester) {}
