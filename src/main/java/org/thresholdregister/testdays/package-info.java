/**
 * Test days: who is due, who is called when, who came, and the calendar that tells of it. A booking is kept whatever
 * becomes of it.
 */
@NullMarked
package org.thresholdregister.testdays;

import org.jspecify.annotations.NullMarked;
