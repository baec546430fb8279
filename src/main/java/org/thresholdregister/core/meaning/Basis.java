package org.thresholdregister.core.meaning;

import org.thresholdregister.core.regulation.Citation;

/**
 * The publication that a number or a definition comes from, and how sure this program is of it.
 *
 * @param source the publication
 * @param certainty whether the numbers were looked up
 */
public record Basis(Citation source, Certainty certainty) {

    /** How sure the program is that it holds what the publication says. */
    public enum Certainty {
        /** Read in the publication or in a work that quotes it. */
        LOOKED_UP,
        /** Known to the trade and written down without the publication at hand; shown as not verified. */
        UNVERIFIED
    }

    public static Basis lookedUp(String source) {
        return new Basis(new Citation(source), Certainty.LOOKED_UP);
    }

    public static Basis unverified(String source) {
        return new Basis(new Citation(source), Certainty.UNVERIFIED);
    }
}
