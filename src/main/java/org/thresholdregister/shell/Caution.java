package org.thresholdregister.shell;

/** The caution that stands under every page. */
final class Caution {

    static final String TEXT = "A record-keeping and calculation aid. A professional supervisor decides on"
            + " work-relatedness, referral and baseline revision; local rules and licensed practice govern.";

    private Caution() {}
}
