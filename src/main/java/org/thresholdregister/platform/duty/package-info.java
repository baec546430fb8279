/** What is owed beside the follow-ups of tests: each feature says what of its own is open. */
@NullMarked
package org.thresholdregister.platform.duty;

import org.jspecify.annotations.NullMarked;
