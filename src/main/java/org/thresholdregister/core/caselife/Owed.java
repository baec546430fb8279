package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ears;

/**
 * A duty of a case that is not done.
 *
 * @param by the last day for it, the earliest of its ears; empty where the rule gives none
 */
public record Owed(Duty duty, Ears ears, Optional<LocalDate> by) {}
