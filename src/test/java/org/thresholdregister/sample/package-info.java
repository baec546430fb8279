/**
 * The invented plant Fernhollow Glassworks: a seeded generator of its roster, hearing tests and decisions, which writes
 * {@code sample-roster/} and, at any size, the same kind of files for measuring.
 */
@NullMarked
package org.thresholdregister.sample;

import org.jspecify.annotations.NullMarked;
