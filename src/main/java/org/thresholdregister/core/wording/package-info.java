/**
 * The one place where determinations are put into words, so that a screen, a letter and a file say the same.
 */
@NullMarked
package org.thresholdregister.core.wording;

import org.jspecify.annotations.NullMarked;
