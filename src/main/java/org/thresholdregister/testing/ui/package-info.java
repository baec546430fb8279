/**
 * The page on which a test is entered, and the part of a worker's page that corrects one.
 */
@NullMarked
package org.thresholdregister.testing.ui;

import org.jspecify.annotations.NullMarked;
