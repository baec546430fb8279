/**
 * The people of the programme: who works where, since when, and with how much noise.
 */
@NullMarked
package org.thresholdregister.roster;

import org.jspecify.annotations.NullMarked;
