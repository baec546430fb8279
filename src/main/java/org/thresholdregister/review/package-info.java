/**
 * What the rules make of the record: a worker's page, the year's shifts, what is owed and by when, and what people
 * decided. The engine judges; what it found is also kept, for lists and counts, and renewed when a record or the day
 * changes.
 */
@NullMarked
package org.thresholdregister.review;

import org.jspecify.annotations.NullMarked;
