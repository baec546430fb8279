/**
 * Letters and forms: what is due to whom, the texts around it, each letter as it was printed, and when and how it was
 * given.
 */
@NullMarked
package org.thresholdregister.letters;

import org.jspecify.annotations.NullMarked;
