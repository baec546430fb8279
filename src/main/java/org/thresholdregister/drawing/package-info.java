/**
 * The audiogram as a picture, as a sentence and as a table, for screen and paper alike. Knows the core only; whoever
 * shows the drawing puts it into a page or a document.
 */
@NullMarked
package org.thresholdregister.drawing;

import org.jspecify.annotations.NullMarked;
