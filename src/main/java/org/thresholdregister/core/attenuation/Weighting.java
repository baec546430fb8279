package org.thresholdregister.core.attenuation;

/** The frequency weighting of a measured level. */
public enum Weighting {
    A("dBA"),
    C("dBC");

    private final String unit;

    Weighting(String unit) {
        this.unit = unit;
    }

    public String unit() {
        return unit;
    }
}
