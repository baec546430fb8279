/** What the same record would look like under other rules: who differs, and why. */
@NullMarked
package org.thresholdregister.core.comparing;

import org.jspecify.annotations.NullMarked;
