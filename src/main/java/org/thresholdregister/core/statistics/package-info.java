/**
 * What counts of people allow to say: rates with their intervals, differences and ratios, and how far chance goes.
 * Floating point, and never near a determination. Intervals are of 95 % unless a name says otherwise.
 */
@NullMarked
package org.thresholdregister.core.statistics;

import org.jspecify.annotations.NullMarked;
