package org.thresholdregister.core.caselife;

import org.thresholdregister.core.audiometry.Ears;

/** Whether a person may make a move now. */
public sealed interface NextMove {

    CaseMove move();

    Ears ears();

    /**
     * @param ears for which it is owed, or else for which it is open
     * @param isOwed whether it does what is owed; other moves are a choice
     */
    record Open(CaseMove move, Ears ears, boolean isOwed) implements NextMove {}

    record NotOpen(CaseMove move, Ears ears, Refusal why) implements NextMove {}
}
