package org.thresholdregister.testdays;

import java.time.ZoneId;

/**
 * How a site is tested.
 *
 * @param mobileUnit whether a mobile unit makes the tests, so that a baseline may take longer
 * @param namesInCalendar whether the calendar feed names the people of a session
 */
public record TestSite(String site, boolean mobileUnit, boolean namesInCalendar, ZoneId timeZone) {}
