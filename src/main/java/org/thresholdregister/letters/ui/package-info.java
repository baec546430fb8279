/** The pages of the letters. */
@NullMarked
package org.thresholdregister.letters.ui;

import org.jspecify.annotations.NullMarked;
