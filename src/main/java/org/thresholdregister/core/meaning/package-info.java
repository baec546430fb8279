/**
 * What an audiogram means beyond the shift: handicap, grades, shapes, referral. Each result names the publication that
 * it rests on and carries what it is not.
 */
@NullMarked
package org.thresholdregister.core.meaning;

import org.jspecify.annotations.NullMarked;
