/**
 * Pieces of the screen that pages share: opening sentence, empty hint, state, dates, downloads.
 */
@NullMarked
package org.thresholdregister.platform.ui;

import org.jspecify.annotations.NullMarked;
