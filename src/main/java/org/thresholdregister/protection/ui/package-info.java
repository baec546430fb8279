/** The pages of protectors and training. */
@NullMarked
package org.thresholdregister.protection.ui;

import org.jspecify.annotations.NullMarked;
