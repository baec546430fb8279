/**
 * The accounts people sign in with: set-up of the first ones, password rule, lock-out, administration.
 */
@NullMarked
package org.thresholdregister.platform.accounts;

import org.jspecify.annotations.NullMarked;
