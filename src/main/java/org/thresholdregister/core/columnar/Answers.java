package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_TEST;

import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;

/**
 * What was answered for every test and ear, in plain arrays: 26 bytes a test, and 8 more where references are kept.
 * Several threads may fill in the tests of different workers.
 */
final class Answers {

    private static final int EARS = Ear.values().length;
    private static final Outcome[] OUTCOMES = Outcome.values();
    private static final Recordability[] RECORDABILITIES = Recordability.values();
    private static final int OUTCOME_BITS = 4;
    private static final int OUTCOME_MASK = (1 << OUTCOME_BITS) - 1;

    /** Outcome and recordability, each as its ordinal plus one; 0 where there is none. */
    private final byte[] words;

    /** Tests are kept as their number plus one; 0 where there is none. */
    private final int[] baselines;

    private final int[] settlingTests;
    private final int[] decidingTests;
    /** Empty where references are not kept. */
    private final int[] references;

    Answers(int tests, boolean withReferences) {
        int rows = Math.multiplyExact(tests, EARS);
        words = new byte[rows];
        baselines = new int[rows];
        settlingTests = new int[rows];
        decidingTests = new int[rows];
        references = new int[withReferences ? rows : 0];
    }

    static int row(int test, int ear) {
        return test * EARS + ear;
    }

    boolean hasRow(int row) {
        return words[row] != 0;
    }

    Outcome outcome(int row) {
        if (words[row] == 0) {
            throw new IllegalArgumentException("this test of this ear is not judged");
        }
        return OUTCOMES[(words[row] & OUTCOME_MASK) - 1];
    }

    boolean hasRecordability(int row) {
        return words[row] >> OUTCOME_BITS != 0;
    }

    Recordability recordability(int row) {
        return RECORDABILITIES[(words[row] >> OUTCOME_BITS) - 1];
    }

    int baseline(int row) {
        return baselines[row] - 1;
    }

    int settlingTest(int row) {
        return settlingTests[row] - 1;
    }

    int decidingTest(int row) {
        return decidingTests[row] - 1;
    }

    int reference(int row) {
        return references.length == 0 ? NO_TEST : references[row] - 1;
    }

    /** A row of which nothing else is asked. */
    void set(int row, Outcome outcome) {
        words[row] = (byte) (outcome.ordinal() + 1);
    }

    void setCompared(int row, Outcome outcome, int baseline) {
        set(row, outcome);
        baselines[row] = baseline + 1;
    }

    /**
     * @param settlingTest whose comparison with the baseline settled the outcome
     * @param decidingTest which the question of the log was asked of, or {@link Population#NO_TEST}
     * @param reference what that test was compared with, or {@link Population#NO_TEST}
     */
    void setJudged(
            int row,
            Outcome outcome,
            int baseline,
            int settlingTest,
            Recordability recordability,
            int decidingTest,
            int reference) {
        words[row] = (byte) (outcome.ordinal() + 1 | recordability.ordinal() + 1 << OUTCOME_BITS);
        baselines[row] = baseline + 1;
        settlingTests[row] = settlingTest + 1;
        decidingTests[row] = decidingTest + 1;
        if (references.length > 0) {
            references[row] = reference + 1;
        }
    }
}
