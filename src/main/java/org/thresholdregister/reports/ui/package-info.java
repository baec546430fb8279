/**
 * The page of the year's summary.
 */
@NullMarked
package org.thresholdregister.reports.ui;

import org.jspecify.annotations.NullMarked;
