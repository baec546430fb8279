/**
 * The criteria by which hearing-conservation programmes refer people to an ear specialist: those that an audiogram
 * answers, and the questions that it cannot answer.
 */
@NullMarked
package org.thresholdregister.core.meaning.referral;

import org.jspecify.annotations.NullMarked;
