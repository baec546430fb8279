/**
 * The age allowance of 29 CFR 1910.95 Appendix F, read from its published tables.
 */
@NullMarked
package org.thresholdregister.core.aging;

import org.jspecify.annotations.NullMarked;
