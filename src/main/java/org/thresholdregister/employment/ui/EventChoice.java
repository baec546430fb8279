package org.thresholdregister.employment.ui;

/** What can be entered by hand; going with a sold plant has a page of its own. */
enum EventChoice {
    MOVED("Moved to another job, department or site", "First day there"),
    ENROLLED("Enrolled", "First day at or above the action level"),
    ENROLMENT_ENDED("Enrolment ended", "First day below the action level"),
    LEAVE_BEGAN("Went on leave", "First day of the leave"),
    RETURNED("Came back from leave", "First day back"),
    LEFT("Left", "Last day of employment"),
    HIRED("Hired, or hired again", "First day of employment"),
    TAKEN_OVER("Came with a bought plant", "First day with this employer"),
    ENGAGED("Agency or contract worker, or no longer", "From");

    private final String label;
    private final String dayLabel;

    EventChoice(String label, String dayLabel) {
        this.label = label;
        this.dayLabel = dayLabel;
    }

    String label() {
        return label;
    }

    String dayLabel() {
        return dayLabel;
    }

    boolean asksForPlace() {
        return this == MOVED || this == HIRED || this == TAKEN_OVER;
    }
}
