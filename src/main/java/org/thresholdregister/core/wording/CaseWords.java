package org.thresholdregister.core.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.caselife.AfterShift;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.caselife.CaseEvent;
import org.thresholdregister.core.caselife.CaseEvent.Origin;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.CaseMove;
import org.thresholdregister.core.caselife.CaseScope;
import org.thresholdregister.core.caselife.CaseState;
import org.thresholdregister.core.caselife.Owed;
import org.thresholdregister.core.caselife.Refusal;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.followup.FollowUpKind;

/** The life of a case in words. */
public final class CaseWords {

    private CaseWords() {}

    /** {@code shift confirmed by the retest of 11 Apr 2026}. */
    public static String event(CaseEvent event) {
        String shift = event.scope() == CaseScope.LOG_ONLY ? "shift from the recording reference" : "shift";
        return switch (event.move()) {
            case SHIFT_FOUND -> shift + " found" + byTest(event);
            case CONFIRMED -> shift + " confirmed" + byTest(event);
            case CLEARED -> shift + " cleared" + byTest(event);
            case FOUND_RECORDABLE -> "found recordable";
            case FOUND_NOT_RECORDABLE -> "found not recordable";
            case FOUND_HELD_BY_EARLIER_CASE -> "found to be held by an earlier case";
            case LEFT_UNDECIDED -> "recordability left undecided";
            case RETEST_SET_ASIDE ->
                event.decision()
                        .map(decision -> "retest of " + Words.day(decision.testDate()) + " set aside as invalid")
                        .orElse("retest set aside as invalid");
            case TEST_SET_ASIDE -> "test set aside as invalid";
            case CLOSED -> "closed, as nothing more is owed";
            case RETEST_BOOKED,
                    NOTICE_SENT,
                    PROTECTOR_REFITTED,
                    TRAINED,
                    REFERRED,
                    FOUND_NOT_WORK_RELATED,
                    FOUND_WORK_RELATED,
                    RECORDED,
                    RE_ENTERED,
                    LINED_OUT -> move(event.move());
        };
    }

    private static String byTest(CaseEvent event) {
        return switch (event.origin()) {
            case Origin.ByTest(var test) ->
                " by the " + Words.purpose(test.purpose()) + " of " + Words.day(test.date());
            case Origin.ByTime() -> ", as no retest settled it in time";
            case Origin.ByPerson ignored -> "";
            case Origin.ByWhatWentBefore() -> "";
        };
    }

    /** What a person does in it: {@code written notice given}. */
    public static String move(CaseMove move) {
        return move == CaseMove.RE_ENTERED
                ? "recorded on the injury log again"
                : move.decision()
                        .map(Words::decision)
                        .orElseThrow(() -> new IllegalArgumentException("derived: " + move));
    }

    /** Why a move is not open, as a sentence. */
    public static String refusal(Refusal why) {
        return switch (why) {
            case NO_SHIFT_FOUND -> "No shift had been found on this test.";
            case SHIFT_FOUND_ALREADY -> "The shift had been found already.";
            case SHIFT_CONFIRMED ->
                "The shift is confirmed, and the time for a retest that could settle it has passed.";
            case SHIFT_CLEARED -> "The retest cleared the shift, so that nothing more follows from it.";
            case TEST_SET_ASIDE -> "The test is set aside as invalid.";
            case NOT_SETTLED -> "Whether the shift stands is not settled yet.";
            case LOG_ANSWERED -> "Whether it is recordable has its answer already.";
            case NOT_RECORDABLE -> "The case is not recordable.";
            case HELD_BY_EARLIER_CASE -> "An earlier case of this ear holds the loss already.";
            case NOT_WORK_RELATED -> "The loss was found not work-related.";
            case NOT_ON_THE_LOG -> "The case does not stand on the injury log.";
            case ON_THE_LOG -> "The case stands on the injury log already.";
            case LINED_OUT -> "The entry on the injury log is lined out.";
            case NO_LOG -> "The rule set keeps no log of cases.";
            case STILL_OWED -> "Something is still owed.";
        };
    }

    /** Why a decision cannot be entered: {@code Right ear: No shift had been found on this test.} */
    public static String objection(WorkerCases.Objection objection) {
        return Words.capitalised(Words.ear(objection.ear())) + ": " + refusal(objection.why());
    }

    /** What stands beside a decision from elsewhere that was no open move when it was made. */
    public static String note(Refusal why) {
        return "Kept as it came, though out of order. " + refusal(why);
    }

    /** What stands beside a decision that names a test without a shift in the ear. */
    public static String withoutCase(WorkerCases.WithoutCase without) {
        Decision decision = without.decision();
        return Words.capitalised(Words.decision(decision.kind())) + " on " + Words.day(decision.decidedOn()) + ", "
                + Words.ear(without.ear()) + ", names the test of " + Words.day(decision.testDate())
                + ", which opened no case of this ear. It is kept as it came.";
    }

    public static String duty(CaseDuty duty) {
        return switch (duty) {
            case NOTICE -> Words.followUp(FollowUpKind.NOTICE);
            case RECORDABILITY -> "an answer whether it is recordable, which the record does not give";
            case RECORD -> Words.followUp(FollowUpKind.RECORD);
            case LINE_OUT -> "lining out the entry on the injury log";
            case REFIT -> "fitting or refitting protectors";
            case TRAINING -> "training in the use of protectors";
        };
    }

    /** {@code Written notice by 22 Apr 2026, left ear}; where the rule gives no date, that. */
    public static String owed(Owed owed) {
        return Words.capitalised(duty(owed.duty()))
                + owed.by().map(day -> " by " + Words.day(day)).orElse("")
                + ", " + Words.ears(owed.ears())
                + (owed.by().isEmpty() ? "; the rule gives no date" : "");
    }

    /** How many cases leave something owed that has no date; empty where none does. */
    public static Optional<String> owedWithoutDate(WorkerCases cases) {
        int number = Math.toIntExact(cases.cases().stream()
                .filter(life -> life.owed().stream().anyMatch(owed -> owed.by().isEmpty()))
                .count());
        return number == 0
                ? Optional.empty()
                : Optional.of(Counted.of(number, "case leaves", "cases leave") + " something owed without a date");
    }

    /** What is not owed for now because the loss was found not work-related. */
    public static String lifted(Owed owed, AfterShift.LiftedBy by) {
        String who = switch (by) {
            case PHYSICIAN -> "a physician";
            case PHYSICIAN_OR_AUDIOLOGIST -> "a physician or an audiologist";
        };
        return Words.capitalised(duty(owed.duty())) + " is not owed for the " + Words.ears(owed.ears())
                + " where it was " + who
                + " who found the loss not work-related; anybody else's finding leaves it owed.";
    }

    /** How the case stands, ear by ear where they differ: {@code shift confirmed, recordable, not on the log yet}. */
    public static String state(CaseLife life) {
        List<String> ears = new ArrayList<>();
        for (Ear ear : List.of(Ear.RIGHT, Ear.LEFT)) {
            life.state(ear).ifPresent(state -> ears.add(Words.ear(ear) + ": " + state(state)));
        }
        boolean alike = life.ears() == Ears.BOTH
                && life.state(Ear.LEFT)
                        .map(CaseWords::state)
                        .equals(life.state(Ear.RIGHT).map(CaseWords::state));
        return alike
                ? life.state(Ear.LEFT)
                        .map(state -> "both ears: " + state(state))
                        .orElseThrow()
                : String.join("; ", ears);
    }

    private static String state(CaseState state) {
        List<String> parts = new ArrayList<>();
        parts.add(
                switch (state.shift()) {
                    case NONE -> "no shift yet";
                    case FOUND -> "shift found, a retest may settle it";
                    case RETEST_BOOKED -> "shift found, retest booked";
                    case CONFIRMED -> "shift confirmed";
                    case CLEARED -> "shift cleared";
                    case SET_ASIDE -> "test set aside";
                });
        if (state.work() == CaseState.Work.FOUND_NOT_RELATED) {
            parts.add("not work-related");
        }
        boolean isOnRecord = state.entry() != CaseState.Entry.NONE;
        switch (state.forTheLog()) {
            case NOT_ASKED, NO_LOG -> {}
            case RECORDABLE -> parts.add(isOnRecord ? "recordable" : "recordable and not on the log yet");
            case NOT_RECORDABLE -> parts.add("not recordable");
            case HELD_BY_EARLIER_CASE -> parts.add("held by an earlier case");
            case UNDECIDED -> parts.add("recordability undecided");
        }
        switch (state.entry()) {
            case NONE -> {}
            case RECORDED -> parts.add("on the injury log");
            case LINED_OUT -> parts.add("lined out on the injury log");
        }
        return parts.stream().collect(Collectors.joining(", "));
    }
}
