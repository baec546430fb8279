package org.thresholdregister.core.meaning.referral;

import static org.thresholdregister.core.audiometry.Frequency.HZ_1000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_2000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_3000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_4000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_500;
import static org.thresholdregister.core.audiometry.Frequency.HZ_6000;

import java.util.List;
import org.thresholdregister.core.audiometry.Frequency;

/** An audiometric referral criterion of the AAO-HNS. Each is a mean of more than so many dB; the limit itself is not. */
public enum ReferralCriterion {
    /** At the baseline: the ear's level. */
    BASELINE_LEVEL(Occasion.BASELINE, List.of(HZ_500, HZ_1000, HZ_2000, HZ_3000), 25),
    /** At the baseline: by how much the ear is worse than the other, low frequencies. */
    BASELINE_DIFFERENCE_LOW(Occasion.BASELINE, List.of(HZ_500, HZ_1000, HZ_2000), 15),
    /** At the baseline: by how much the ear is worse than the other, high frequencies. */
    BASELINE_DIFFERENCE_HIGH(Occasion.BASELINE, List.of(HZ_3000, HZ_4000, HZ_6000), 30),
    /** At a later test: by how much the ear is worse than at the baseline, low frequencies. */
    WORSENING_LOW(Occasion.LATER_TEST, List.of(HZ_500, HZ_1000, HZ_2000), 15),
    /** At a later test: by how much the ear is worse than at the baseline, high frequencies. */
    WORSENING_HIGH(Occasion.LATER_TEST, List.of(HZ_3000, HZ_4000, HZ_6000), 20);

    private final Occasion occasion;
    private final List<Frequency> frequencies;
    private final int moreThanDecibels;

    ReferralCriterion(Occasion occasion, List<Frequency> frequencies, int moreThanDecibels) {
        this.occasion = occasion;
        this.frequencies = frequencies;
        this.moreThanDecibels = moreThanDecibels;
    }

    /** When a criterion is asked. */
    public enum Occasion {
        BASELINE,
        LATER_TEST
    }

    public Occasion occasion() {
        return occasion;
    }

    public List<Frequency> frequencies() {
        return frequencies;
    }

    /** The limit in dB, which has to be exceeded. */
    public int moreThanDecibels() {
        return moreThanDecibels;
    }
}
