package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * A proposed baseline revision with all that a professional needs to see to decide on it.
 *
 * @param ruleSet the rule set that it is judged by
 * @param evidence the two tests that it rests on, each compared with the present baseline
 * @param laterTests what the ear's tests after the proposed baseline are, and would be
 * @param following the proposals that accepting this one would bring, as the tests on record stand
 */
public record ProposalCase(
        BaselineChange proposal,
        RuleSet ruleSet,
        List<ThresholdShift> evidence,
        List<LaterTest> laterTests,
        List<BaselineChange> following) {

    /**
     * A test after the proposed baseline, compared with both. Each is the test's own comparison: no retest is taken
     * into account.
     */
    public record LaterTest(ThresholdShift fromPresentBaseline, ThresholdShift fromProposedBaseline) {}

    public ProposalCase {
        evidence = List.copyOf(evidence);
        laterTests = List.copyOf(laterTests);
        following = List.copyOf(following);
    }

    /**
     * The open proposal of this ear; empty where there is none.
     *
     * @param options the day and the age correction that it is looked at with
     */
    public static Optional<ProposalCase> open(WorkerHistory history, JudgingOptions options, Ear ear) {
        WorkerJudgement judgement = Judge.judge(history, options.withBaselineRevision(BaselineRevision.PROPOSE));
        return OpenProposals.of(history, judgement).stream()
                .filter(proposal -> proposal.ear() == ear)
                .findFirst()
                .map(proposal -> of(proposal, history, options, judgement));
    }

    private static ProposalCase of(
            BaselineChange proposal, WorkerHistory history, JudgingOptions options, WorkerJudgement judgement) {
        List<Audiogram> judged = judgement.determinations().stream()
                .filter(determination -> determination.ear() == proposal.ear())
                .map(Determination::test)
                .toList();
        return new ProposalCase(
                proposal,
                options.ruleSet(),
                proposal.evidence().stream()
                        .map(day -> shift(proposal.from(), on(day, judged, proposal), proposal.ear(), history, options))
                        .toList(),
                judged.stream()
                        .filter(test -> Audiogram.CHRONOLOGICAL.compare(proposal.to(), test) < 0)
                        .map(test -> new LaterTest(
                                shift(proposal.from(), test, proposal.ear(), history, options),
                                shift(proposal.to(), test, proposal.ear(), history, options)))
                        .toList(),
                OpenProposals.following(proposal, judgement));
    }

    /** The test of that day that the proposal rests on: the new baseline, the one that completes it, or the last. */
    private static Audiogram on(LocalDate day, List<Audiogram> judged, BaselineChange proposal) {
        if (day.equals(proposal.to().date())) {
            return proposal.to();
        }
        if (day.equals(proposal.after().date())) {
            return proposal.after();
        }
        return judged.stream()
                .filter(test -> test.date().equals(day)
                        && test.levelSum(proposal.ear()).exact().isPresent())
                .reduce((earlier, later) -> later)
                .orElseThrow(() -> new IllegalStateException("a proposal rests on a test that is not judged"));
    }

    private static ThresholdShift shift(
            Audiogram from, Audiogram to, Ear ear, WorkerHistory history, JudgingOptions options) {
        return ThresholdShift.between(
                ear,
                from,
                to,
                AgeAllowance.between(
                        options.ageTables(),
                        history.worker().birthDate(),
                        history.worker().sex(),
                        from.date(),
                        to.date()),
                options.ruleSet().shift().criterion());
    }
}
