/**
 * Shapes that publications describe: notches within an ear, differences between the ears. Descriptions only; a shape
 * names no cause.
 */
@NullMarked
package org.thresholdregister.core.meaning.shape;

import org.jspecify.annotations.NullMarked;
