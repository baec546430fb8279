package org.thresholdregister.letters;

import java.util.List;

/**
 * The text that holds at a site.
 *
 * @param versions what the site saved, the latest first; empty where the standard text was never changed
 */
public record TextInForce(String content, List<TextVersion> versions) {
    public TextInForce {
        versions = List.copyOf(versions);
    }
}
