/**
 * The page on which files are handed over, looked at and stored.
 */
@NullMarked
package org.thresholdregister.intake.ui;

import org.jspecify.annotations.NullMarked;
