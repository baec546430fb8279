/**
 * A whole population judged at once: the tests of everybody in plain arrays, and the answers beside them. It gives what
 * {@code core.judging} gives, by the same numbers, for those who need many answers and no sentence; one worker's history
 * is handed back to {@code core.judging.Judge} when somebody looks at it.
 */
@NullMarked
package org.thresholdregister.core.columnar;

import org.jspecify.annotations.NullMarked;
