/**
 * Which retests take the place of which tests: the thirty-day window of 29 CFR 1910.95(g)(7)(ii).
 */
@NullMarked
package org.thresholdregister.core.retest;

import org.jspecify.annotations.NullMarked;
