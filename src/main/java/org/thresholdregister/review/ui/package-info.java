/**
 * The pages of review: a worker's record.
 */
@NullMarked
package org.thresholdregister.review.ui;

import org.jspecify.annotations.NullMarked;
