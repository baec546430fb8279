/**
 * Who is called to a hearing test at what time: the people who are due, the hours of a test day, and the plan that
 * brings both together. It decides nothing about hearing.
 */
@NullMarked
package org.thresholdregister.core.scheduling;

import org.jspecify.annotations.NullMarked;
