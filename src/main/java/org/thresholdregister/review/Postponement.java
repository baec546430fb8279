package org.thresholdregister.review;

import java.time.LocalDate;

/**
 * That something is put off; what is due by a rule stays due on its day.
 *
 * @param until the day on which it is to be done
 * @param by the account of whoever put it off
 * @param on the day of that
 */
public record Postponement(LocalDate until, String reason, String by, LocalDate on) {}
