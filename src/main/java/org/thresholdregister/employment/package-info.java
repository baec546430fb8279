/**
 * Working lives: events by hand or by a roster file, each kept for good, and the roster row that follows from them.
 */
@NullMarked
package org.thresholdregister.employment;

import org.jspecify.annotations.NullMarked;
