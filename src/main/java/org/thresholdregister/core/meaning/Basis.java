package org.thresholdregister.core.meaning;

import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * The publication that a number or a definition comes from, and how well this program knows it.
 *
 * @param source the publication
 */
public record Basis(Citation source, Provenance provenance) {

    public static Basis lookedUp(String source) {
        return new Basis(new Citation(source), Provenance.LOOKED_UP);
    }

    public static Basis unverified(String source) {
        return new Basis(new Citation(source), Provenance.UNVERIFIED);
    }
}
