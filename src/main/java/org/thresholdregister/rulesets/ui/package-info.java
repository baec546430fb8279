/** The page of the rule sets. */
@NullMarked
package org.thresholdregister.rulesets.ui;

import org.jspecify.annotations.NullMarked;
