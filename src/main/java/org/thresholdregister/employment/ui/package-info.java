/** The working life on a worker's page, and the page for a plant that is sold. */
@NullMarked
package org.thresholdregister.employment.ui;

import org.jspecify.annotations.NullMarked;
