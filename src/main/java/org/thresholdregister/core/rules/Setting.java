package org.thresholdregister.core.rules;

/**
 * A number of a rule set that could not be checked against its text, and that a site may therefore set from its own
 * copy. It is shown as unverified.
 *
 * @param word its name in files and options, such as {@code retest-days}
 * @param meaning what it is, as a noun phrase
 * @param unit such as {@code days} or {@code dB}
 */
public record Setting(String word, String meaning, String unit, int value, int lowest, int highest) {

    public Setting {
        if (value < lowest || value > highest) {
            throw new IllegalArgumentException(
                    word + " is " + value + "; it goes from " + lowest + " to " + highest + " " + unit);
        }
    }

    /** @throws IllegalArgumentException outside the range of this setting */
    public Setting with(int other) {
        return new Setting(word, meaning, unit, other, lowest, highest);
    }
}
