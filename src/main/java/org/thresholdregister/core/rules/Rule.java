package org.thresholdregister.core.rules;

import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * A question that a rule set reads from every judged test beside its own shift.
 *
 * @param word the name in files
 * @param name the name for people, in lower case
 * @param explained when it speaks, as a clause: "15 dB or more at ..."
 * @param consequence what it calls for, as a sentence
 */
public record Rule(
        String word,
        String name,
        Criterion criterion,
        String explained,
        String consequence,
        Citation basis,
        Provenance provenance) {}
