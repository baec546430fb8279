/**
 * How lists are asked for and how values are stored: filtered by the sites a person may see, ordered, a page at a time.
 */
@NullMarked
package org.thresholdregister.platform.query;

import org.jspecify.annotations.NullMarked;
