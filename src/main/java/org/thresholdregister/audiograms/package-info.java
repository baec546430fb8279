/**
 * The hearing tests on record, just as they were given.
 */
@NullMarked
package org.thresholdregister.audiograms;

import org.jspecify.annotations.NullMarked;
