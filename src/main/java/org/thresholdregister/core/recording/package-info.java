/**
 * Whether a shift is a recordable case under 29 CFR 1904.10, and against which audiogram that is judged.
 */
@NullMarked
package org.thresholdregister.core.recording;

import org.jspecify.annotations.NullMarked;
