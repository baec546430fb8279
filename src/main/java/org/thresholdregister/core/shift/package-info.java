/**
 * How far a test has moved from an earlier one, frequency by frequency, and whether that is a standard threshold
 * shift.
 */
@NullMarked
package org.thresholdregister.core.shift;

import org.jspecify.annotations.NullMarked;
