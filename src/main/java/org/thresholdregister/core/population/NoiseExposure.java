package org.thresholdregister.core.population;

/** A level of noise, kept up for so many years. */
public record NoiseExposure(ExposureLevel level, double years) {}
