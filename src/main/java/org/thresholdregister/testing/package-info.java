/**
 * Tests entered by hand: typed, kept half-typed, signed, and superseded once they turn out to be wrong.
 */
@NullMarked
package org.thresholdregister.testing;

import org.jspecify.annotations.NullMarked;
