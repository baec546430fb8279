package org.thresholdregister.core.columnar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;

/**
 * What was determined about every test and ear of a population, and what is owed to its workers. Immutable, and safe to
 * read from several threads. A {@link JudgedRow} tells what a determination rests on. Sentences, and what the rules beside
 * the shift find, are not kept: they are for {@code Judge}, who is given {@link Population#history}.
 */
public final class JudgedPopulation {

    private final Population population;
    private final JudgingOptions options;
    private final AppliedRules rules;
    private final Answers answers;
    /** Where each worker's follow-ups begin; one more entry than workers. */
    private final int[] firstFollowUps;

    private final FollowUpColumns followUps;
    private final Map<Integer, List<BaselineChange>> proposals;

    JudgedPopulation(
            Population population,
            JudgingOptions options,
            AppliedRules rules,
            Answers answers,
            int[] firstFollowUps,
            FollowUpColumns followUps,
            Map<Integer, List<BaselineChange>> proposals) {
        this.population = population;
        this.options = options;
        this.rules = rules;
        this.answers = answers;
        this.firstFollowUps = firstFollowUps;
        this.followUps = followUps;
        this.proposals = proposals;
    }

    public Population population() {
        return population;
    }

    public JudgingOptions options() {
        return options;
    }

    /** Whether there is a determination: not for a test that is never judged, is set aside, or lies in the future. */
    public boolean hasRow(int test, Ear ear) {
        return answers.hasRow(Answers.row(test, ear.ordinal()));
    }

    /** @throws IllegalArgumentException where there is no determination */
    public Outcome outcome(int test, Ear ear) {
        return answers.outcome(Answers.row(test, ear.ordinal()));
    }

    /** A reader of determinations, which stands on none yet. For one thread. */
    public JudgedRow newRow() {
        return new JudgedRow(population, rules, answers);
    }

    /**
     * The number of the first thing owed to the worker. The last one stands before {@link #endOfFollowUps}; between
     * them they are sorted by due day, kind and test.
     */
    public int firstFollowUp(int worker) {
        return firstFollowUps[worker];
    }

    /** The number after the last thing owed to the worker. */
    public int endOfFollowUps(int worker) {
        return firstFollowUps[worker + 1];
    }

    public FollowUpKind followUpKind(int followUp) {
        return followUps.kind(followUp);
    }

    public int followUpDueDay(int followUp) {
        return followUps.dueDay(followUp);
    }

    /** The day of the test that it follows, or {@link Population#NO_DAY}. */
    public int followUpTestDay(int followUp) {
        return followUps.testDay(followUp);
    }

    public Ears followUpEars(int followUp) {
        return followUps.ears(followUp);
    }

    public boolean isFollowUpOverdue(int followUp) {
        return followUps.dueDay(followUp) < options.asOf().toEpochDay();
    }

    /** What is owed to the worker, by due day, kind and test. */
    public List<FollowUp> followUps(int worker) {
        List<FollowUp> all = new ArrayList<>();
        for (int i = firstFollowUp(worker); i < endOfFollowUps(worker); i++) {
            int testDay = followUpTestDay(i);
            all.add(new FollowUp(
                    followUpKind(i),
                    LocalDate.ofEpochDay(followUpDueDay(i)),
                    testDay == Population.NO_DAY ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(testDay)),
                    followUpEars(i)));
        }
        return all;
    }

    /** Baseline revisions that a professional may be asked for; empty where revision is off. */
    public List<BaselineChange> proposals(int worker) {
        return proposals.getOrDefault(worker, List.of());
    }
}
