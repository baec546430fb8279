package org.thresholdregister.protection;

import java.time.LocalDate;
import org.thresholdregister.core.caselife.Owed;

/** Something that a case of a worker leaves owed with protectors or training. */
public record OwedRow(String workerId, String name, String site, String department, LocalDate testDate, Owed owed) {}
