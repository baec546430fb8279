package org.thresholdregister.intake;

/** How far an import has come, and whether it is to go on. Called by the thread that imports. */
public interface ImportProgress {

    /** The steps of an import, in order. */
    enum Phase {
        READING,
        STORING_WORKERS,
        STORING_TESTS,
        STORING_DECISIONS,
        JUDGING
    }

    /** @param total of the phase; 0 where it is not known */
    void report(Phase phase, int done, int total);

    /** Asked between steps; once true, the import ends and leaves nothing behind. */
    boolean isCancelled();

    /** Nobody watches. */
    static ImportProgress unwatched() {
        return new ImportProgress() {
            @Override
            public void report(Phase phase, int done, int total) {}

            @Override
            public boolean isCancelled() {
                return false;
            }
        };
    }
}
