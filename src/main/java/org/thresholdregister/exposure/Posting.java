package org.thresholdregister.exposure;

import java.time.LocalDate;

/** That the standard was put up, or seen to be still up, at a place of a site (29 CFR 1910.95(l)(1)). */
public record Posting(String site, String place, LocalDate seenOn, String seenBy) {}
