package org.thresholdregister.exposure;

import java.time.LocalDate;

/** That a worker was told the result of a measurement. */
public record Told(LocalDate on, HowTold how) {}
