/**
 * Measures how fast files are judged, beside the same judgement in SQL and in Python: a seeded generator of files of any
 * size, the runs, and the comparison of what they wrote.
 */
@NullMarked
package org.thresholdregister.benchmark;

import org.jspecify.annotations.NullMarked;
