package org.thresholdregister.core.calibration;

/** An octave band by its centre frequency in Hz. */
public enum OctaveBand {
    HZ_125(125),
    HZ_250(250),
    HZ_500(500),
    HZ_1000(1000),
    HZ_2000(2000),
    HZ_4000(4000),
    HZ_8000(8000);

    private final int hertz;

    OctaveBand(int hertz) {
        this.hertz = hertz;
    }

    public int hertz() {
        return hertz;
    }
}
