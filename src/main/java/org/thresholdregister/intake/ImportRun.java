package org.thresholdregister.intake;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;

/** A confirmed import that goes on in the background: how far it is, and in the end what came of it. */
public final class ImportRun implements ImportProgress {

    /** Where an import stands. */
    public sealed interface State {

        /** @param total of the phase; 0 where it is not known */
        record Running(Phase phase, int done, int total) implements State {}

        record Ended(ImportResult result) implements State {}

        /** Something went wrong that nobody expected, and nothing was stored. */
        record Failed(Throwable cause) implements State {}
    }

    private final ImportPreview preview;
    private final InstantSource time;
    private final Instant startedAt;
    private volatile State state = new State.Running(Phase.READING, 0, 0);
    private volatile Instant latest;
    private volatile boolean stopping;

    ImportRun(ImportPreview preview, InstantSource time) {
        this.preview = preview;
        this.time = time;
        this.startedAt = time.instant();
        this.latest = startedAt;
    }

    /** What was confirmed. */
    public ImportPreview preview() {
        return preview;
    }

    public State state() {
        return state;
    }

    public boolean isRunning() {
        return state instanceof State.Running;
    }

    /** How long it has been running, or ran. */
    public Duration duration() {
        return Duration.between(startedAt, isRunning() ? time.instant() : latest);
    }

    /** Asks it to stop; where it is not past its last step, it ends and leaves nothing behind. */
    public void stop() {
        stopping = true;
    }

    public boolean isStopping() {
        return stopping;
    }

    @Override
    public void report(Phase phase, int done, int total) {
        state = new State.Running(phase, done, total);
    }

    @Override
    public boolean isCancelled() {
        return stopping;
    }

    void end(State last) {
        latest = time.instant();
        state = last;
    }

    /** Whether it ended before this moment. */
    boolean endedBefore(Instant moment) {
        return !isRunning() && latest.isBefore(moment);
    }
}
