package org.thresholdregister.core.judging;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** The rules that a workplace answers to. */
public enum RuleSet {
    /** 29 CFR 1910.95 and 1904.10. */
    OSHA("osha");

    private final String word;

    RuleSet(String word) {
        this.word = word;
    }

    /** The word used in files and options. */
    public String word() {
        return word;
    }

    public static Optional<RuleSet> find(String word) {
        return Arrays.stream(values()).filter(set -> set.word.equals(word)).findFirst();
    }

    /** The words of all rule sets, for a message. */
    public static String words() {
        return Arrays.stream(values()).map(RuleSet::word).collect(Collectors.joining(", "));
    }
}
