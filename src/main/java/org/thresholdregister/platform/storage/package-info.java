/**
 * Where the register lies on disk, and the refusal to open it twice.
 */
@NullMarked
package org.thresholdregister.platform.storage;

import org.jspecify.annotations.NullMarked;
