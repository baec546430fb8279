package org.thresholdregister;

import org.jspecify.annotations.NullMarked;

/** Turns the start of the web app into an exit code. */
@NullMarked
final class WebApp {

    private WebApp() {}

    /** 0 once the app answers, 1 where it could not start. */
    static int start(String... settings) {
        try {
            Application.serve(settings);
            return 0;
        } catch (RuntimeException reported) {
            // Spring has said on the console why it could not start.
            return 1;
        }
    }
}
