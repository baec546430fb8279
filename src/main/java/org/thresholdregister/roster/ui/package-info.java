/**
 * The page of all workers.
 */
@NullMarked
package org.thresholdregister.roster.ui;

import org.jspecify.annotations.NullMarked;
