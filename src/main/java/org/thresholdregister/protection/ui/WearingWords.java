package org.thresholdregister.protection.ui;

import java.util.Locale;
import org.thresholdregister.platform.ui.StateBadge.Kind;
import org.thresholdregister.protection.Issue;
import org.thresholdregister.protection.WearingRow.State;

/** The words of the lists of protectors. */
final class WearingWords {

    private WearingWords() {}

    static String state(State state) {
        return switch (state) {
            case NONE_GIVEN -> "no protector on record";
            case TARGET_NOT_REACHED -> "target not reached";
            case PAIR_MISSING -> "plug and muff together not given";
            case NO_ESTIMATE -> "no estimate by the picked method";
            case REACHED -> "target reached";
        };
    }

    static Kind kind(State state) {
        return switch (state) {
            case NONE_GIVEN, TARGET_NOT_REACHED, PAIR_MISSING -> Kind.OVERDUE;
            case NO_ESTIMATE -> Kind.UNDECIDED;
            case REACHED -> Kind.DONE;
        };
    }

    static String how(Issue.How how) {
        return how.name().toLowerCase(Locale.ROOT);
    }
}
