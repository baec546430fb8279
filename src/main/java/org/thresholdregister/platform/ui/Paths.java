package org.thresholdregister.platform.ui;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collection;

/** Addresses of pages that pages of other features lead to, relative to the application. */
public final class Paths {

    /** The page of one worker, without the number. */
    public static final String WORKER = "worker";

    /** The page of one ear's baseline proposal, without ear and number. */
    public static final String BASELINE_PROPOSAL = "baseline-proposal";

    /** The page on which a test is entered, without the number. */
    public static final String TEST = "test";

    /** The page that writes letters, where there is one; see {@link #letters}. */
    public static final String LETTERS = "letters";

    private Paths() {}

    /** The page that writes letters, for the workers with these numbers: {@code letters?workers=W-1,W-2}. */
    public static String letters(Collection<String> workerIds) {
        return LETTERS + "?workers=" + segment(String.join(",", workerIds));
    }

    /** The page of the worker with this number. */
    public static String worker(String workerId) {
        return WORKER + "/" + segment(workerId);
    }

    /** The page of the baseline proposal for this ear ({@code left} or {@code right}) of the worker with this number. */
    public static String baselineProposal(String ear, String workerId) {
        return BASELINE_PROPOSAL + "/" + ear + "/" + segment(workerId);
    }

    /** The page on which a test of the worker with this number is entered. */
    public static String test(String workerId) {
        return TEST + "/" + segment(workerId);
    }

    private static String segment(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
