/**
 * What every feature stands on: sign-in and roles, accounts, the audit trail, the clock, storage and shared pieces of
 * the screen. It knows no feature.
 */
@NullMarked
package org.thresholdregister.platform;

import org.jspecify.annotations.NullMarked;
