/**
 * The population models of ISO 7029 (hearing and age) and ISO 1999 (hearing, age and noise): what many people of an age
 * and a sex would hear, and where one measured level stands among them. Estimates of populations, in floating point;
 * no rule reads them.
 */
@NullMarked
package org.thresholdregister.core.population;

import org.jspecify.annotations.NullMarked;
