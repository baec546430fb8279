package org.thresholdregister.core.audiometry;

import java.util.List;

/**
 * The test frequencies of a workplace hearing test, in Hz. 29 CFR 1910.95(h)(1) asks for 500 to 6000 Hz; 8000 Hz is
 * commonly added.
 */
public enum Frequency {
    HZ_500(500),
    HZ_1000(1000),
    HZ_2000(2000),
    HZ_3000(3000),
    HZ_4000(4000),
    HZ_6000(6000),
    HZ_8000(8000);

    /** The three frequencies that 29 CFR 1910.95(g)(10)(i) and 1904.10(a) average. */
    public static final List<Frequency> AVERAGED = List.of(HZ_2000, HZ_3000, HZ_4000);

    private final int hertz;

    Frequency(int hertz) {
        this.hertz = hertz;
    }

    public int hertz() {
        return hertz;
    }
}
