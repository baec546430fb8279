/** The pages of noise, and its part of a worker's page. */
@NullMarked
package org.thresholdregister.exposure.ui;

import org.jspecify.annotations.NullMarked;
