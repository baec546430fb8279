/** What is asked and seen at a hearing test beside the thresholds; nothing here judges. */
@NullMarked
package org.thresholdregister.core.clinical;

import org.jspecify.annotations.NullMarked;
