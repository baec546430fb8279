/**
 * The clinical part of the record, the nurse's alone: health and noise history, the look into the ears, what the worker
 * said, and refusals. Nothing of it reaches another role.
 */
@NullMarked
package org.thresholdregister.clinical;

import org.jspecify.annotations.NullMarked;
