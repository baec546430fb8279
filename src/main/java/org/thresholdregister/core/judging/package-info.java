/**
 * The whole judgement of one worker: every test and ear, in order, with what follows from it.
 */
@NullMarked
package org.thresholdregister.core.judging;

import org.jspecify.annotations.NullMarked;
