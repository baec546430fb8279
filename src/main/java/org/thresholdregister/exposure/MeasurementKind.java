package org.thresholdregister.exposure;

/** How noise was measured; 29 CFR 1910.95 Appendix B asks for it when attenuation is estimated. */
public enum MeasurementKind {
    /** A dosimeter worn through the shift: Appendix B (i) and (ii). */
    PERSONAL_DOSIMETRY,
    /** A sound level meter beside the worker, levels and times: Appendix B (iii) and (iv). */
    SOUND_LEVEL_METER,
    /** A level of the area: Appendix B (v) and (vi). */
    AREA_LEVEL
}
