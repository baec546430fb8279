/**
 * What is owed to a worker, and by when.
 */
@NullMarked
package org.thresholdregister.core.followup;

import org.jspecify.annotations.NullMarked;
