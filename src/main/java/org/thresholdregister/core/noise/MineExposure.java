package org.thresholdregister.core.noise;

import org.thresholdregister.core.regulation.Citation;

/**
 * A day by 30 CFR Part 62, whose limits are doses: the action level at 50 percent, the limit above 100, protection by plug
 * and muff above 800, and a ceiling of 115 dBA at any time.
 *
 * @param action counted from 80 dBA
 * @param limit counted from 90 dBA
 * @param aboveCeiling whether a level is above 115 dBA
 */
public record MineExposure(NoiseDose action, NoiseDose limit, boolean aboveCeiling) {

    public static final Citation BASIS = new Citation("30 CFR 62.101, 62.120, 62.130 and 62.140");
    private static final double LIMIT_PERCENT = 100;
    private static final double DUAL_PERCENT = 800;
    private static final double CEILING_DBA = 115;

    public static MineExposure of(NoiseDay day) {
        return new MineExposure(
                NoiseDose.of(day, DoseRule.MSHA_ACTION),
                NoiseDose.of(day, DoseRule.MSHA_LIMIT),
                day.periods().stream().anyMatch(period -> period.level().decibels() > CEILING_DBA));
    }

    public boolean reachesActionLevel() {
        return action.reaches(NoiseDose.ACTION_PERCENT);
    }

    public boolean exceedsLimit() {
        return limit.exceeds(LIMIT_PERCENT);
    }

    /** Whether a plug and a muff have to be worn together. */
    public boolean needsDualProtection() {
        return limit.exceeds(DUAL_PERCENT);
    }
}
