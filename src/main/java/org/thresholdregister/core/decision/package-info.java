/**
 * What people decided before or elsewhere, which judging must respect.
 */
@NullMarked
package org.thresholdregister.core.decision;

import org.jspecify.annotations.NullMarked;
