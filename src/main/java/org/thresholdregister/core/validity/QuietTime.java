package org.thresholdregister.core.validity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.audiometry.TestPurpose;

/** How long before a test a worker is to be away from workplace noise, by one rule or another. */
public enum QuietTime {
    /** 29 CFR 1910.95(g)(5)(iii): 14 hours before a baseline; protectors may stand in. Nothing is asked of other tests. */
    OSHA(14, true, EnumSet.of(TestPurpose.BASELINE), FlagSource.OSHA_QUIET_TIME),
    /** The criteria of 1998: 12 hours before a baseline and before the test that confirms a shift; protectors do not count. */
    NIOSH(12, false, EnumSet.of(TestPurpose.BASELINE, TestPurpose.RETEST), FlagSource.NIOSH_QUIET_TIME),
    /** 16 hours before a baseline, by practice elsewhere, which knows no standing in of protectors. */
    SIXTEEN_HOURS(16, false, EnumSet.of(TestPurpose.BASELINE), FlagSource.SIXTEEN_HOURS);

    private final int hours;
    private final boolean protectorsMayStandIn;
    private final Set<TestPurpose> before;
    private final FlagSource source;

    QuietTime(int hours, boolean protectorsMayStandIn, Set<TestPurpose> before, FlagSource source) {
        this.hours = hours;
        this.protectorsMayStandIn = protectorsMayStandIn;
        this.before = before;
        this.source = source;
    }

    /** The rule that asks for so many hours, as an option gives them. */
    public static Optional<QuietTime> ofHours(String hours) {
        return Arrays.stream(values())
                .filter(rule -> Integer.toString(rule.hours).equals(hours))
                .findFirst();
    }

    public int hours() {
        return hours;
    }

    /** Whether hearing protectors may be worn instead of keeping the quiet time. */
    public boolean protectorsMayStandIn() {
        return protectorsMayStandIn;
    }

    public FlagSource source() {
        return source;
    }

    boolean appliesBefore(TestPurpose purpose) {
        return before.contains(purpose);
    }

    boolean isKept(BigDecimal hoursSinceNoise) {
        return hoursSinceNoise.compareTo(BigDecimal.valueOf(hours)) >= 0;
    }
}
