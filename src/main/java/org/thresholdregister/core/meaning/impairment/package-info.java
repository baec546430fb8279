/**
 * Percentage of hearing handicap, material-impairment averages and grades, in whole numbers and fractions throughout.
 */
@NullMarked
package org.thresholdregister.core.meaning.impairment;

import org.jspecify.annotations.NullMarked;
