package org.thresholdregister.core.clinical;

import java.util.Set;

/** The look into one ear: what it showed, and a note, which may be empty. No finding at all: nobody looked. */
public record EarLook(Set<CanalFinding> findings, String note) {

    /** The most characters of a note. */
    public static final int LONGEST_NOTE = 500;

    public static final EarLook NOT_LOOKED = new EarLook(Set.of(), "");

    public EarLook {
        findings = Set.copyOf(findings);
    }

    public boolean isEmpty() {
        return findings.isEmpty() && note.isEmpty();
    }

    /** Whether it is said to be clear and something else at once. */
    public boolean contradictsItself() {
        return findings.contains(CanalFinding.CLEAR) && findings.size() > 1;
    }
}
