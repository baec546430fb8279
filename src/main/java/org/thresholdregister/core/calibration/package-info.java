/**
 * Whether the equipment of a test was in order: calibration, the daily functional check, the room, the tester. Pure
 * values; the feature that keeps the register of instruments hands over what is on record.
 */
@NullMarked
package org.thresholdregister.core.calibration;

import org.jspecify.annotations.NullMarked;
