/**
 * The house around the pages: layout and menu, sign-in, the door rules, and what is shown when something fails.
 */
@NullMarked
package org.thresholdregister.shell;

import org.jspecify.annotations.NullMarked;
