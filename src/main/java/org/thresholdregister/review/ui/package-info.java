/**
 * Pages of what is owed and what was found: today, all follow-ups, the year's shifts.
 */
@NullMarked
package org.thresholdregister.review.ui;

import org.jspecify.annotations.NullMarked;
