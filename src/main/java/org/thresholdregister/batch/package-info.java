/** The commands that run without the web app: no Spring, no database. */
@NullMarked
package org.thresholdregister.batch;

import org.jspecify.annotations.NullMarked;
