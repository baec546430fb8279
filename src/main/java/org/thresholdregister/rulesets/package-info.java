/**
 * Which rule set each site answers to, from when on, and the holidays that deadlines in working days skip. The rule sets
 * themselves are data in {@code core.rules}.
 */
@NullMarked
package org.thresholdregister.rulesets;

import org.jspecify.annotations.NullMarked;
