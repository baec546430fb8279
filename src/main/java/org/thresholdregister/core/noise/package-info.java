/**
 * How much noise a day holds: dose, time-weighted average and permitted time by the published formulas. Logarithms make
 * this floating point; whatever decides is compared with a tolerance far below what an instrument can tell apart, and the
 * sum of Table G-16 exactly.
 */
@NullMarked
package org.thresholdregister.core.noise;

import org.jspecify.annotations.NullMarked;
