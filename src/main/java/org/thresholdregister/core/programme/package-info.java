/**
 * Whether a programme works, as far as its tests show: how much people's tests change from one to the next, beside the
 * ranges of audiometric database analysis. About groups, never about a person; no rule reads it, and none of the ranges is
 * a limit of any regulation.
 */
@NullMarked
package org.thresholdregister.core.programme;

import org.jspecify.annotations.NullMarked;
