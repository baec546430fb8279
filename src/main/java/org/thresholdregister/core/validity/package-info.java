/**
 * Whether a test can be trusted: doubts about it, each with its reason and its source. A flag is for the tester or the
 * reviewer to look at. It changes no number, excludes no test and decides nothing.
 */
@NullMarked
package org.thresholdregister.core.validity;

import org.jspecify.annotations.NullMarked;
