/**
 * Noise at work: what was measured, whom it puts into the programme and who was told, what changed since, and what is done
 * about it. Nothing here is a health record, but all of it belongs to a site.
 */
@NullMarked
package org.thresholdregister.exposure;

import org.jspecify.annotations.NullMarked;
