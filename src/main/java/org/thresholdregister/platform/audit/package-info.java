/**
 * The audit trail: who did what to which record, and when. Entries are added and never changed.
 */
@NullMarked
package org.thresholdregister.platform.audit;

import org.jspecify.annotations.NullMarked;
