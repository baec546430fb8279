/**
 * The year's counts by site and department.
 */
@NullMarked
package org.thresholdregister.core.summary;

import org.jspecify.annotations.NullMarked;
