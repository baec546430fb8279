package org.thresholdregister.audiograms;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;

/** One ear's thresholds, a column each; the name of the ear comes before the column's. */
@Embeddable
class EarThresholds {

    @Column(name = "_500")
    private Threshold at500;

    @Column(name = "_1000")
    private Threshold at1000;

    @Column(name = "_2000")
    private Threshold at2000;

    @Column(name = "_3000")
    private Threshold at3000;

    @Column(name = "_4000")
    private Threshold at4000;

    @Column(name = "_6000")
    private Threshold at6000;

    @Column(name = "_8000")
    private Threshold at8000;

    /** The second reading at 1000 Hz. */
    @Column(name = "_1000_repeat")
    private Threshold repeatAt1000;

    @SuppressWarnings("NullAway.Init")
    protected EarThresholds() {}

    EarThresholds(Audiogram audiogram, Ear ear, Threshold secondAt1000) {
        at500 = audiogram.threshold(ear, Frequency.HZ_500);
        at1000 = audiogram.threshold(ear, Frequency.HZ_1000);
        at2000 = audiogram.threshold(ear, Frequency.HZ_2000);
        at3000 = audiogram.threshold(ear, Frequency.HZ_3000);
        at4000 = audiogram.threshold(ear, Frequency.HZ_4000);
        at6000 = audiogram.threshold(ear, Frequency.HZ_6000);
        at8000 = audiogram.threshold(ear, Frequency.HZ_8000);
        repeatAt1000 = secondAt1000;
    }

    Threshold repeatAt1000() {
        return repeatAt1000;
    }

    Threshold at(Frequency frequency) {
        return switch (frequency) {
            case HZ_500 -> at500;
            case HZ_1000 -> at1000;
            case HZ_2000 -> at2000;
            case HZ_3000 -> at3000;
            case HZ_4000 -> at4000;
            case HZ_6000 -> at6000;
            case HZ_8000 -> at8000;
        };
    }
}
