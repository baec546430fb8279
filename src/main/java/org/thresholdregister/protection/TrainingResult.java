package org.thresholdregister.protection;

/** What came of entering a training or who took part in it. */
public sealed interface TrainingResult {

    /**
     * It is on record.
     *
     * @param sessionKey of the training
     * @param casesMovedOn how many workers' cases had training owed that is entered now
     */
    record Entered(long sessionKey, int casesMovedOn) implements TrainingResult {}

    /** Nothing was changed. */
    record NotEntered(ProtectionProblem problem) implements TrainingResult {}
}
