/**
 * Hearing protectors and training: what a site gives out and to whom, what it keeps off of a worker's noise, who has to
 * wear one, and who was trained when and is due again.
 */
@NullMarked
package org.thresholdregister.protection;

import org.jspecify.annotations.NullMarked;
