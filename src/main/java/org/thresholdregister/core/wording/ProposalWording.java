package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.judging.ProposalCase;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RevisionRule;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.shift.ThresholdShift;

/** Puts a proposed baseline revision into words for the professional who accepts or declines it. */
public final class ProposalWording {

    private final ProposalCase about;
    private final BaselineChange proposal;
    private final Ear ear;
    private final List<Sentence> sentences = new ArrayList<>();

    private ProposalWording(ProposalCase about) {
        this.about = about;
        this.proposal = about.proposal();
        this.ear = proposal.ear();
    }

    /** The whole proposal in one line, for a file. */
    public static String reason(BaselineChange proposal) {
        String days = proposal.evidence().stream().map(Words::day).collect(Collectors.joining(" and "));
        String finding = switch (proposal.kind()) {
            case PERSISTENT_IMPROVEMENT -> "5 dB or more better than the baseline on the tests of " + days;
            case PERSISTENT_SHIFT ->
                "A standard threshold shift on the tests of " + days + ", six months or more apart";
            case DECIDED -> "Chosen on the test of " + days;
        };
        return finding + "; mean level " + mean(proposal.from(), proposal.ear()) + " at the baseline, "
                + mean(proposal.to(), proposal.ear()) + " on the test of "
                + Words.day(proposal.to().date()) + ". A professional decides.";
    }

    /** {@code lasting worsening}. */
    public static String kind(BaselineChange.Kind kind) {
        return switch (kind) {
            case PERSISTENT_IMPROVEMENT -> "lasting improvement";
            case PERSISTENT_SHIFT -> "lasting worsening";
            case DECIDED -> "chosen by a person";
        };
    }

    /**
     * The working: both audiograms, the arithmetic, the rule, what each later test would be on the new baseline, and
     * who decides.
     */
    public static List<Sentence> working(ProposalCase about) {
        ProposalWording wording = new ProposalWording(about);
        wording.proposed();
        wording.audiograms();
        wording.rule();
        wording.chosenOfTheTwo();
        wording.laterTests();
        wording.whoDecides();
        return List.copyOf(wording.sentences);
    }

    private void proposed() {
        say(
                Words.capitalised(Words.ear(ear)) + ": it is proposed that the baseline moves from the "
                        + name(proposal.from()) + " to the " + name(proposal.to()) + ", for a "
                        + kind(proposal.kind()) + ". The other ear is not concerned.",
                about.ruleSet().paragraph(Step.REVISED_BASELINE));
    }

    private void audiograms() {
        say(
                levels(proposal.from(), "The present baseline, the " + name(proposal.from()) + ", shows"),
                about.ruleSet().paragraph(Step.BASELINE));
        for (ThresholdShift evidence : about.evidence()) {
            say(
                    levels(evidence.later(), "The " + name(evidence.later()) + " shows") + " " + change(evidence),
                    Citation.REVISION_GUIDE);
        }
    }

    /** "At 2000, 3000 and 4000 Hz 10, 10, 15 dB HL: 35 in all, a mean of 11.67 dB HL." */
    private String levels(Audiogram test, String subject) {
        String levels = Frequency.AVERAGED.stream()
                .map(frequency -> Words.thresholdCell(test.threshold(ear, frequency)))
                .collect(Collectors.joining(", "));
        return subject + " " + levels + " dB HL at 2000, 3000 and 4000 Hz: " + sum(test) + " in all, a mean of "
                + mean(test, ear) + ".";
    }

    private String change(ThresholdShift evidence) {
        int raw = evidence.uncorrectedSum().exact().orElseThrow();
        return switch (proposal.kind()) {
            case PERSISTENT_IMPROVEMENT ->
                "That is " + -raw + " dB less in all than at the baseline, a mean of " + MeanOfThree.ofSum(-raw)
                        + " dB better. No age allowance is made here.";
            case PERSISTENT_SHIFT, DECIDED ->
                "That is " + raw + " dB more in all than at the baseline; " + corrected(evidence, raw);
        };
    }

    private static String corrected(ThresholdShift evidence, int raw) {
        int corrected = evidence.sum().exact().orElse(raw);
        String mean = "a mean shift of " + MeanOfThree.ofSum(corrected) + " dB.";
        return corrected == raw
                ? "no age allowance is taken off: " + mean
                : "the age allowance takes off " + (raw - corrected) + " and leaves " + corrected + ", " + mean;
    }

    private void rule() {
        RevisionRule numbers = about.ruleSet().revision();
        LocalDate first = proposal.evidence().getFirst();
        say(
                switch (proposal.kind()) {
                    case PERSISTENT_IMPROVEMENT ->
                        "The guide's first rule: a mean " + numbers.improvementDb() + " dB or more better ("
                                + Frequency.AVERAGED.size() * numbers.improvementDb()
                                + " dB or more in all) on one test and on the next one. Both tests meet it.";
                    case PERSISTENT_SHIFT ->
                        "The guide's second rule: a " + about.ruleSet().shift().name() + " ("
                                + about.ruleSet().shift().explained()
                                + " after the age allowance) that is still there on"
                                + " a test " + numbers.persistenceMonths()
                                + " months later or more. Both tests meet it,"
                                + " and " + numbers.persistenceMonths() + " months after the first was "
                                + Words.day(first.plusMonths(numbers.persistenceMonths())) + ".";
                    case DECIDED -> "A person chose this baseline.";
                },
                Citation.REVISION_GUIDE);
    }

    private void chosenOfTheTwo() {
        if (about.evidence().size() < 2) {
            return;
        }
        Audiogram first = about.evidence().getFirst().later();
        Audiogram second = about.evidence().getLast().later();
        boolean equal = sum(first) == sum(second);
        say(
                equal
                        ? "Both tests have the same mean: the guide takes the earlier one"
                                + (proposal.kind() == BaselineChange.Kind.PERSISTENT_SHIFT
                                        ? ", unless the later has better thresholds at other frequencies, which a"
                                                + " professional looks at."
                                        : ".")
                        : "Of the two tests the guide takes the one with the lower mean: the " + name(proposal.to())
                                + ", "
                                + mean(proposal.to(), ear) + " against "
                                + mean(proposal.to().equals(first) ? second : first, ear) + ".",
                Citation.REVISION_GUIDE);
    }

    private void laterTests() {
        if (about.laterTests().isEmpty()) {
            say(
                    "No test of this ear was made after the proposed baseline.",
                    about.ruleSet().paragraph(Step.COMPARISON));
        }
        for (ProposalCase.LaterTest later : about.laterTests()) {
            ThresholdShift proposed = later.fromProposedBaseline();
            ThresholdShift present = later.fromPresentBaseline();
            say(
                    "On the new baseline the " + name(proposed.later()) + " would show a mean shift of "
                            + Words.mean(proposed.sum()) + ", " + shift(proposed) + "; on the present one it shows "
                            + Words.mean(present.sum()) + ", " + shift(present) + ".",
                    about.ruleSet().paragraph(Step.SHIFT));
        }
        for (BaselineChange next : about.following()) {
            say(
                    "Once this is accepted, the tests on record also give the next proposal: to move on to the "
                            + name(next.to()) + ", for a " + kind(next.kind()) + ".",
                    Citation.REVISION_GUIDE);
        }
    }

    private static String shift(ThresholdShift shift) {
        return switch (shift.isShift()) {
            case YES -> "a shift";
            case NO -> "no shift";
            case UNDECIDED -> "which cannot be decided";
        };
    }

    private void whoDecides() {
        say(
                "An annual audiogram may take the baseline's place where the audiologist, otolaryngologist or physician"
                        + " who evaluates it judges that "
                        + switch (proposal.kind()) {
                            case PERSISTENT_IMPROVEMENT -> "it shows significant improvement over the baseline.";
                            case PERSISTENT_SHIFT, DECIDED -> "the standard threshold shift is persistent.";
                        },
                about.ruleSet().paragraph(Step.REVISED_BASELINE));
        say(
                "The guide is a professional's aid. A professional supervisor decides, and may decide otherwise for a"
                        + " reason.",
                Citation.REVISION_GUIDE);
        say(
                "Accepted, the new baseline counts for tests made after the day of the decision; what was determined"
                        + " before stands as it was made. Declined, the baseline stays, and this test is not proposed for"
                        + " this ear again.",
                about.ruleSet().paragraph(Step.REVISED_BASELINE));
    }

    private int sum(Audiogram test) {
        return test.levelSum(ear).exact().orElseThrow();
    }

    private static String mean(Audiogram test, Ear ear) {
        return MeanOfThree.ofSum(test.levelSum(ear).exact().orElseThrow()) + " dB HL";
    }

    private static String name(Audiogram test) {
        return Words.purpose(test.purpose()) + " of " + Words.day(test.date());
    }

    private void say(String text, Citation basis) {
        sentences.add(Sentence.of(text, basis));
    }
}
