/**
 * What a rule is quoted by: paragraphs of the published rules, and the three-valued answers that rules give.
 */
@NullMarked
package org.thresholdregister.core.regulation;

import org.jspecify.annotations.NullMarked;
