package org.thresholdregister.core.summary;

/** One count: how many of a measure in a group, over tests made in a calendar year. */
public record SummaryRow(int year, Group group, Measure measure, Count count) {}
