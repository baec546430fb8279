package org.thresholdregister.platform.ui;

/** Marks a view that shows a person's health record, which the foot of its printed page then says. */
public interface HealthRecordPage {

    /** The site that the record belongs to; empty where there is none, or more than one. */
    default String site() {
        return "";
    }
}
