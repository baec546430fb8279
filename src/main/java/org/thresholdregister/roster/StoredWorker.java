package org.thresholdregister.roster;

/**
 * A worker of the register.
 *
 * @param key the register's own key, by which records of other features name the worker
 */
public record StoredWorker(long key, WorkerDetails details) {}
