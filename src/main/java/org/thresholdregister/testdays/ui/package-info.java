/**
 * The pages of test days: the list of days, a day, who is due, the run sheet, work shifts and the calendar.
 */
@NullMarked
package org.thresholdregister.testdays.ui;

import org.jspecify.annotations.NullMarked;
