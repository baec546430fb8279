/** The pages of instruments, rooms and testers. */
@NullMarked
package org.thresholdregister.instruments.ui;

import org.jspecify.annotations.NullMarked;
