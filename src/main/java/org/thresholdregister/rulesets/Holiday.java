package org.thresholdregister.rulesets;

import java.time.LocalDate;

/** A day besides weekends on which nobody works. */
public record Holiday(LocalDate day, String name) {}
