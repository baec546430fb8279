/**
 * The one source of today's date, which can be pinned for a demonstration or a test.
 */
@NullMarked
package org.thresholdregister.platform.clock;

import org.jspecify.annotations.NullMarked;
