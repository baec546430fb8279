/**
 * The pages of review: what is owed today, a worker's record, the year's shifts.
 */
@NullMarked
package org.thresholdregister.review.ui;

import org.jspecify.annotations.NullMarked;
