package org.thresholdregister.core.rules;

import java.util.Optional;
import org.thresholdregister.core.aging.AgeTables;
import org.thresholdregister.core.shift.ShiftCriterion;

/**
 * What a rule set calls a shift.
 *
 * @param name as the rule set calls it, in lower case: "standard threshold shift"
 * @param explained the criterion in words, as a clause: "a mean of 10 dB or more"
 * @param ageTables the tables of the optional allowance for aging; empty where the rule set makes none
 */
public record ShiftRule(
        String name, String explained, ShiftCriterion criterion, Reference reference, Optional<AgeTables> ageTables) {}
