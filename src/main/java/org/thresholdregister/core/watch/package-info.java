/**
 * Instrument watch: what the tests made on one instrument and headset say about it. Each test is held against its
 * worker's own earlier tests; what all workers have in common is the instrument's. A method of this project (cumulative
 * sums, Page 1954), no rule's: a signal asks for a look at the instrument and never changes a determination. Floating
 * point.
 */
@NullMarked
package org.thresholdregister.core.watch;

import org.jspecify.annotations.NullMarked;
