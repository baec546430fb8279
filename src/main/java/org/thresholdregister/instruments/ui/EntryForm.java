package org.thresholdregister.instruments.ui;

/** What can be entered on the page of instruments. */
enum EntryForm {
    UNIT("Enter an audiometer"),
    HEADSET("Enter earphones"),
    CALIBRATED_TO("Enter the unit of earphones"),
    CALIBRATION("Enter a calibration"),
    CHECK("Enter a functional check"),
    ROOM("Enter a room"),
    MEASUREMENT("Enter background levels"),
    TESTER("Enter a tester"),
    CERTIFICATE("Enter a certificate");

    private final String label;

    EntryForm(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
