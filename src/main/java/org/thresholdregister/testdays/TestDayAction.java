package org.thresholdregister.testdays;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of test days. */
enum TestDayAction implements AuditAction {
    TEST_DAY_PLANNED,
    TEST_DAY_CANCELLED,
    TESTS_PROPOSED,
    TESTS_CONFIRMED,
    TEST_BOOKED,
    TEST_MOVED,
    BOOKING_REMOVED,
    ARRIVAL_NOTED,
    TEST_MADE_OF_BOOKING,
    NO_SHOW_NOTED,
    REFUSAL_NOTED,
    RUN_SHEET_OPENED,
    WORK_SHIFT_SAVED,
    WORK_SHIFT_REMOVED,
    WORK_SHIFT_ASSIGNED,
    TEST_SITE_CHANGED,
    PROTECTORS_UNTIL_BASELINE_NOTED,
    CALENDAR_LINK_MADE,
    CALENDAR_LINK_REVOKED
}
