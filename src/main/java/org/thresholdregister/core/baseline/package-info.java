/**
 * Which audiogram an ear is compared with, and when a professional may be asked to change it.
 */
@NullMarked
package org.thresholdregister.core.baseline;

import org.jspecify.annotations.NullMarked;
