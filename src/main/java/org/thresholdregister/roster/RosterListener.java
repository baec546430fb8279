package org.thresholdregister.roster;

/** A feature that keeps account of what a roster file changes about a worker on record: a bean that the store finds. */
public interface RosterListener {

    /** Told in the same transaction, once the row has been changed; not of workers who are new. */
    void changed(long workerKey, WorkerDetails before, WorkerDetails after, long importBatch);
}
