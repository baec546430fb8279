/**
 * Reading a plant's files: from bytes to rows, and from rows to records or to problems that say how to mend them.
 * Nothing is dropped without a word, and a bad row never stops the good ones. The screens and the batch command use
 * the same reader; it streams, and {@link org.thresholdregister.intake.Intake} packs what has to be kept.
 */
@NullMarked
package org.thresholdregister.intake;

import org.jspecify.annotations.NullMarked;
