package org.thresholdregister.core.validity;

import java.util.Collection;

/** How many flags there are, by weight. */
public record FlagCount(int doubts, int notes) {

    public static final FlagCount NONE = new FlagCount(0, 0);

    public static FlagCount of(Collection<ValidityFlag> flags) {
        int doubts = 0;
        for (ValidityFlag flag : flags) {
            doubts += flag.kind().weight() == FlagKind.Weight.DOUBT ? 1 : 0;
        }
        return new FlagCount(doubts, flags.size() - doubts);
    }

    public FlagCount withoutNotes() {
        return new FlagCount(doubts, 0);
    }

    public boolean isNone() {
        return doubts + notes == 0;
    }
}
