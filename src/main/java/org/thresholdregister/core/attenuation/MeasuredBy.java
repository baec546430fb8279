package org.thresholdregister.core.attenuation;

/** How the noise was measured, as 29 CFR 1910.95 Appendix B tells its cases apart. */
public enum MeasuredBy {
    DOSIMETER,
    SOUND_LEVEL_METER,
    AREA_MONITORING
}
