package org.thresholdregister.letters;

import static org.thresholdregister.letters.TextPart.BASELINE_REVISION;
import static org.thresholdregister.letters.TextPart.NOT_WORK_RELATED;
import static org.thresholdregister.letters.TextPart.REFERRAL;
import static org.thresholdregister.letters.TextPart.RESULT;
import static org.thresholdregister.letters.TextPart.RETEST_INVITATION;
import static org.thresholdregister.letters.TextPart.SHIFT_NOTICE;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a text may leave to be filled in. A block stands in a paragraph of its own. */
public enum Placeholder {
    WORKER_NAME("the worker's name", false, EnumSet.allOf(TextPart.class), Set.of()),
    WORKER_NUMBER("the worker's number", false, EnumSet.allOf(TextPart.class), Set.of()),
    SITE("the site", false, EnumSet.allOf(TextPart.class), Set.of()),
    NURSE_NAME("who prints the letter", false, EnumSet.allOf(TextPart.class), Set.of()),
    LETTER_DATE("the day of the letter", false, EnumSet.allOf(TextPart.class), Set.of()),
    TEST_DATE(
            "the day of the test",
            false,
            EnumSet.range(RESULT, NOT_WORK_RELATED),
            EnumSet.of(RESULT, SHIFT_NOTICE, RETEST_INVITATION, REFERRAL, NOT_WORK_RELATED)),
    EARS(
            "the ear or ears it is about",
            false,
            EnumSet.range(RESULT, NOT_WORK_RELATED),
            EnumSet.of(RETEST_INVITATION, BASELINE_REVISION, NOT_WORK_RELATED)),
    NOTICE_BY("the last day for the notice", false, EnumSet.of(SHIFT_NOTICE), Set.of()),
    RETEST_BY("the last day for the retest", false, EnumSet.of(RETEST_INVITATION), EnumSet.of(RETEST_INVITATION)),
    BASELINE_DATE("the day of the new baseline", false, EnumSet.of(BASELINE_REVISION), EnumSet.of(BASELINE_REVISION)),
    WHY_REVISED("why the baseline moved", false, EnumSet.of(BASELINE_REVISION), Set.of()),
    DECIDED_BY(
            "the professional who decided",
            false,
            EnumSet.of(BASELINE_REVISION, NOT_WORK_RELATED),
            EnumSet.of(BASELINE_REVISION, NOT_WORK_RELATED)),
    DECIDED_ON(
            "the day of the decision",
            false,
            EnumSet.of(BASELINE_REVISION, NOT_WORK_RELATED),
            EnumSet.of(BASELINE_REVISION, NOT_WORK_RELATED)),
    FINDINGS(
            "what was found, ear by ear",
            true,
            EnumSet.of(RESULT, SHIFT_NOTICE, REFERRAL),
            EnumSet.of(RESULT, SHIFT_NOTICE, REFERRAL)),
    TABLE("the thresholds as a table", true, EnumSet.of(RESULT, SHIFT_NOTICE, REFERRAL), EnumSet.of(REFERRAL)),
    AUDIOGRAM("the audiogram drawn", true, EnumSet.of(RESULT, SHIFT_NOTICE, REFERRAL), EnumSet.of(RESULT, REFERRAL)),
    NEXT_STEPS("what happens next", true, EnumSet.of(RESULT, SHIFT_NOTICE), EnumSet.of(RESULT, SHIFT_NOTICE)),
    NOTICE_STATEMENT("what the rule says of the notice", true, EnumSet.of(SHIFT_NOTICE), EnumSet.of(SHIFT_NOTICE)),
    WHEN_AND_WHERE("when and where the retest is", true, EnumSet.of(RETEST_INVITATION), EnumSet.of(RETEST_INVITATION)),
    QUIET_TIME("the hours without noise", true, EnumSet.of(RETEST_INVITATION), EnumSet.of(RETEST_INVITATION)),
    FACTS("who is referred, with job and noise", true, EnumSet.of(REFERRAL), EnumSet.of(REFERRAL)),
    HISTORY("the health history", true, EnumSet.of(REFERRAL), EnumSet.of(REFERRAL)),
    ENCLOSURES("the list of enclosures", true, EnumSet.of(REFERRAL), EnumSet.of(REFERRAL)),
    SIGNATURE_LINE("a line to sign on", true, EnumSet.range(RESULT, NOT_WORK_RELATED), Set.of());

    private final String meaning;
    private final boolean block;
    private final Set<TextPart> allowed;
    private final Set<TextPart> required;

    Placeholder(String meaning, boolean block, Set<TextPart> allowed, Set<TextPart> required) {
        this.meaning = meaning;
        this.block = block;
        this.allowed = allowed;
        this.required = required;
    }

    static Optional<Placeholder> find(String written) {
        return Arrays.stream(values())
                .filter(placeholder -> placeholder.written().equals(written))
                .findFirst();
    }

    /** As it stands in a text: {@code {worker.name}}. */
    public String written() {
        return "{" + name().toLowerCase(Locale.ROOT).replace('_', '.') + "}";
    }

    /** What it is filled with, for people. */
    public String meaning() {
        return meaning;
    }

    /** Whether it stands in a paragraph of its own. */
    public boolean isBlock() {
        return block;
    }

    public boolean isAllowedIn(TextPart part) {
        return allowed.contains(part);
    }

    public boolean isRequiredIn(TextPart part) {
        return required.contains(part);
    }
}
