/**
 * The values of a pure-tone hearing test: ears, frequencies, thresholds in dB HL, and the audiogram that holds them.
 * A threshold that was not measured is a value of its own and never a number.
 */
@NullMarked
package org.thresholdregister.core.audiometry;

import org.jspecify.annotations.NullMarked;
