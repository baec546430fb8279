package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_TEST;

import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/**
 * What was answered for every test and ear, in plain arrays: 28 bytes a test, and 8 more where references are kept.
 * Several threads may fill in the tests of different workers.
 */
final class Answers {

    private static final int EARS = Ear.values().length;
    private static final Outcome[] OUTCOMES = Outcome.values();
    private static final Recordability[] RECORDABILITIES = Recordability.values();
    private static final Answer[] ANSWERS = Answer.values();
    private static final int BITS = 4;
    private static final int MASK = (1 << BITS) - 1;

    /** Outcome, answer on the shift, and recordability, each as its ordinal plus one; 0 where there is none. */
    private final short[] words;

    /** Tests are kept as their number plus one; 0 where there is none. */
    private final int[] baselines;

    private final int[] settlingTests;
    private final int[] decidingTests;
    /** Empty where references are not kept. */
    private final int[] references;

    Answers(int tests, boolean withReferences) {
        int rows = Math.multiplyExact(tests, EARS);
        words = new short[rows];
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
        return OUTCOMES[(words[row] & MASK) - 1];
    }

    /** Whether the test shows a shift; only of a row that is compared with a baseline. */
    Answer shift(int row) {
        return ANSWERS[(words[row] >> BITS & MASK) - 1];
    }

    boolean hasRecordability(int row) {
        return words[row] >> 2 * BITS != 0;
    }

    Recordability recordability(int row) {
        return RECORDABILITIES[(words[row] >> 2 * BITS) - 1];
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
        words[row] = (short) (outcome.ordinal() + 1);
    }

    void setCompared(int row, Outcome outcome, int baseline, Answer shift) {
        set(row, outcome);
        words[row] |= (short) (shift.ordinal() + 1 << BITS);
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
            Answer shift,
            int settlingTest,
            Recordability recordability,
            int decidingTest,
            int reference) {
        setCompared(row, outcome, baseline, shift);
        words[row] |= (short) (recordability.ordinal() + 1 << 2 * BITS);
        settlingTests[row] = settlingTest + 1;
        decidingTests[row] = decidingTest + 1;
        if (references.length > 0) {
            references[row] = reference + 1;
        }
    }
}
