/**
 * The life of a case, from the shift found to the last duty done: one state machine for all rule sets, what happened in
 * order, what may come next and what is still owed. What determinations say is derived from them each time and stored
 * nowhere; what people did comes from decisions.
 */
@NullMarked
package org.thresholdregister.core.caselife;

import org.jspecify.annotations.NullMarked;
