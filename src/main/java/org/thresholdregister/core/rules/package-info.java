/**
 * The rules that workplaces answer to, as data over one small rule language: a {@link org.thresholdregister.core.rules.RuleSet}
 * says what a shift is, what a retest does, what is reported and by when, and which
 * {@link org.thresholdregister.core.rules.Rule}s are read beside it. {@link org.thresholdregister.core.rules.RuleSets}
 * is the list of them.
 */
@NullMarked
package org.thresholdregister.core.rules;

import org.jspecify.annotations.NullMarked;
