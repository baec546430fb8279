package org.thresholdregister.exposure;

import java.util.List;
import java.util.SortedMap;

/**
 * What a measurement can stand for, as the roster of today names it.
 *
 * @param groups noise groups by site, and {@code jobs} likewise
 */
public record RosterNames(
        List<String> sites, SortedMap<String, List<String>> groups, SortedMap<String, List<String>> jobs) {}
