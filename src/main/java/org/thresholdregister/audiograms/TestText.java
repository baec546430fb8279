package org.thresholdregister.audiograms;

/** A text that says who made a test, and with what. */
public enum TestText {
    TESTER("tester"),
    INSTRUMENT("instrument"),
    TRANSDUCER("transducer"),
    ROOM("room");

    private final String path;

    TestText(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
