package org.thresholdregister.core.attenuation;

import java.util.Arrays;
import java.util.Locale;
import org.thresholdregister.core.regulation.Citation;

/** The six ways in which 29 CFR 1910.95 Appendix B uses the noise reduction rating. */
public enum AppendixBCase {
    /** A dosimeter that can weight by C. */
    I(MeasuredBy.DOSIMETER, Weighting.C),
    /** A dosimeter that cannot. */
    II(MeasuredBy.DOSIMETER, Weighting.A),
    /** A sound level meter set to A. */
    III(MeasuredBy.SOUND_LEVEL_METER, Weighting.A),
    /** A sound level meter set to C. */
    IV(MeasuredBy.SOUND_LEVEL_METER, Weighting.C),
    /** Area monitoring with a meter set to A. */
    V(MeasuredBy.AREA_MONITORING, Weighting.A),
    /** Area monitoring with a meter set to C. */
    VI(MeasuredBy.AREA_MONITORING, Weighting.C);

    private final MeasuredBy measuredBy;
    private final Weighting weighting;

    AppendixBCase(MeasuredBy measuredBy, Weighting weighting) {
        this.measuredBy = measuredBy;
        this.weighting = weighting;
    }

    public MeasuredBy measuredBy() {
        return measuredBy;
    }

    public Weighting weighting() {
        return weighting;
    }

    /** {@code (ii)}. */
    public String number() {
        return "(" + name().toLowerCase(Locale.ROOT) + ")";
    }

    Citation basis() {
        return new Citation("29 CFR 1910.95 Appendix B " + number());
    }

    /** The case for a level that was measured so. */
    public static AppendixBCase of(MeasuredBy measuredBy, Weighting weighting) {
        return Arrays.stream(values())
                .filter(some -> some.measuredBy == measuredBy && some.weighting == weighting)
                .findFirst()
                .orElseThrow();
    }
}
