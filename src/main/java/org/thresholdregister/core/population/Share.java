package org.thresholdregister.core.population;

/**
 * A share of a population, from the least to the most that remain possible; from 0 to 1, 0.25 is a quarter. The same
 * number twice is a plain share.
 */
public record Share(double least, double most) {

    /** @throws IllegalArgumentException for a share outside 0 to 1, or a least above the most */
    public Share {
        if (!(least >= 0 && least <= most && most <= 1)) {
            throw new IllegalArgumentException("no share: " + least + " to " + most);
        }
    }

    static Share exactly(double share) {
        return new Share(share, share);
    }

    public boolean isExact() {
        return least == most;
    }

    /** By how much this share is larger than one that cannot exceed it. */
    Share excessOver(Share smaller) {
        return new Share(Math.max(0, least - smaller.most), Math.max(0, most - smaller.least));
    }
}
