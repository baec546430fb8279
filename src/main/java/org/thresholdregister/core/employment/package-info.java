/**
 * The working life of one worker: dated events, and what follows from them on a day. What it means for baselines, due
 * dates and records is said by {@code core.wording.WorkingLifeWords}.
 */
@NullMarked
package org.thresholdregister.core.employment;

import org.jspecify.annotations.NullMarked;
