package org.thresholdregister.review;

/** A determination that changed after something was sent or recorded on it, with the worker. */
public record AlterationRow(
        String workerId, String familyName, String givenName, String site, String department, Alteration alteration) {}
