/** The year's summary, on screen and as a workbook. */
@NullMarked
package org.thresholdregister.reports;

import org.jspecify.annotations.NullMarked;
