/**
 * How much of a worker's noise a hearing protector keeps off: the published ways of estimating it, each with its
 * working, and what the rules ask to be reached. Levels are in dB and exact decimals; only sentences round.
 */
@NullMarked
package org.thresholdregister.core.attenuation;

import org.jspecify.annotations.NullMarked;
