/**
 * Pages of the accounts: first set-up and the administrator's list of users.
 */
@NullMarked
package org.thresholdregister.platform.accounts.ui;

import org.jspecify.annotations.NullMarked;
