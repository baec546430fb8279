package org.thresholdregister.core.employment;

import org.thresholdregister.core.regulation.Citation;

/**
 * Whose worker someone is. Who supervises day to day keeps the injury log: 29 CFR 1904.31(a) and (b)(2) to (4).
 *
 * @param employer the agency or contractor; empty for the employer's own people
 * @param supervisedHere whether the employer that keeps this register supervises from day to day
 */
public record Engagement(Kind kind, String employer, boolean supervisedHere) {

    /** The paragraph that says who records. */
    public static final Citation BASIS = new Citation("29 CFR 1904.31(a), (b)(2)-(4)");

    /** On the employer's own payroll. */
    public static final Engagement OWN = new Engagement(Kind.OWN, "", true);

    /** How someone came to work here. */
    public enum Kind {
        /** On the payroll: 1904.31(a). */
        OWN("own"),
        /** From a temporary help service or leased: (b)(2). */
        AGENCY("agency"),
        /** A contractor's employee: (b)(3). */
        CONTRACTOR("contractor");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in the database. */
        public String word() {
            return word;
        }
    }

    /** @throws IllegalArgumentException for own people of another employer, or others of none */
    public Engagement {
        if ((kind == Kind.OWN) != employer.isBlank()) {
            throw new IllegalArgumentException("an agency or contractor is named, and no other employer");
        }
        if (kind == Kind.OWN && !supervisedHere) {
            throw new IllegalArgumentException("those on the payroll are recorded here");
        }
    }

    /** Whether a case goes on this employer's log; it is recorded once, by one employer: (b)(4). */
    public boolean recordedHere() {
        return supervisedHere;
    }
}
