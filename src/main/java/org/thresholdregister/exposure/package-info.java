/**
 * Noise at work: what was measured, who belongs to the programme because of it, and who was told. Nothing here is a health record, but all of it belongs to a site.
 */
@NullMarked
package org.thresholdregister.exposure;

import org.jspecify.annotations.NullMarked;
