package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.regulation.Citation;

/**
 * A duty of a case that is not done.
 *
 * @param by the last day for it, the earliest of its ears; empty where the rule gives none
 * @param rule the paragraph that asks for it
 */
public record Owed(CaseDuty duty, Ears ears, Optional<LocalDate> by, Optional<Citation> rule) {}
