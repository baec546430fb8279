/** When a worker's training in noise, protectors and tests is due. */
@NullMarked
package org.thresholdregister.core.training;

import org.jspecify.annotations.NullMarked;
