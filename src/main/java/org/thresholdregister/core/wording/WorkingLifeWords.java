package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.employment.Absence;
import org.thresholdregister.core.employment.DatedEvent;
import org.thresholdregister.core.employment.Engagement;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.Placement;
import org.thresholdregister.core.employment.Standing;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.employment.WorkState;
import org.thresholdregister.core.employment.WorkingLife;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.Step;

/**
 * A working life in words, with what each event means for baselines, due dates and records. Where no text that was looked
 * up says anything, the sentence says so and names common practice; whoever reads it decides.
 */
public final class WorkingLifeWords {

    /** Nothing in 29 CFR 1910.95 asks for a test at the end; a published recommendation does. */
    public static final Citation EXIT_TEST =
            new Citation("common practice; NIOSH 98-126 (from memory) recommends an exit audiogram");

    /** The annual test, where it fell due while the worker was away. */
    public static final Citation TEST_ON_RETURN =
            new Citation("29 CFR 1910.95(g)(6); testing soon after the return is common practice");

    /** Who gets the audiometric records of a plant that is sold. */
    public static final Citation TO_SUCCESSOR = new Citation("29 CFR 1910.95(m)(5)");

    private static final Citation ANNUAL = new Citation("29 CFR 1910.95(g)(6)");
    private static final Citation COMMON_PRACTICE = new Citation("common practice");
    private static final Citation AWAY_FROM_MINE = new Citation("30 CFR 62.170(a)(3), from memory");
    private static final String MINES = "msha";

    private WorkingLifeWords() {}

    /** {@code hired again as grinder, Cold End, Fernhollow}. */
    public static String event(DatedEvent dated, WorkingLife life) {
        return switch (dated.event()) {
            case WorkEvent.Hired(var place) -> (life.isRehire(dated) ? "hired again" : "hired") + at(place);
            case WorkEvent.Listed(var place) -> "on the roster, hired on a day that is not given" + at(place);
            case WorkEvent.TakenOver(var predecessor, var place) ->
                "came with the plant bought from " + predecessor + at(place);
            case WorkEvent.Engaged(var engagement) -> engagement(engagement);
            case WorkEvent.Enrolled enrolled -> "enrolled: exposed at or above the action level from this day on";
            case WorkEvent.EnrolmentEnded ended -> "enrolment ended: exposed below the action level from this day on";
            case WorkEvent.Moved(var to) -> "moved" + (to.inWords().isEmpty() ? "" : " to " + to.inWords());
            case WorkEvent.LeaveBegan(var until) ->
                "on leave" + until.map(day -> " until " + Words.day(day)).orElse(", until when is not known");
            case WorkEvent.Returned returned -> "back from leave";
            case WorkEvent.Left left -> "left; last day of employment";
            case WorkEvent.TransferredToSuccessor(var successor) ->
                "went with the sold plant to " + successor + "; last day with this employer";
        };
    }

    private static String at(Placement place) {
        return place.inWords().isEmpty() ? "" : ", " + place.inWords();
    }

    private static String engagement(Engagement engagement) {
        return switch (engagement.kind()) {
            case OWN -> "on the employer's own payroll";
            case AGENCY -> "worker of the agency " + engagement.employer() + supervision(engagement);
            case CONTRACTOR -> "employee of the contractor " + engagement.employer() + supervision(engagement);
        };
    }

    private static String supervision(Engagement engagement) {
        return engagement.supervisedHere()
                ? ", supervised here from day to day"
                : ", supervised by " + engagement.employer() + " from day to day";
    }

    /** {@code On leave since 3 Feb 2026, until 30 Apr 2026}. */
    public static String standing(WorkState state) {
        return switch (state.standing()) {
            case Standing.NotYetEmployed none -> "Not employed yet";
            case Standing.Employed employed -> "Employed" + since(state);
            case Standing.OnLeave(var since, var until) ->
                "On leave since " + Words.day(since)
                        + until.map(day -> ", until " + Words.day(day)).orElse(", until when is not known");
            case Standing.HasLeft(var lastDay) -> "Left on " + Words.day(lastDay);
            case Standing.WithSuccessor(var lastDay, var successor) ->
                "Went with the sold plant to " + successor + " on " + Words.day(lastDay);
        };
    }

    private static String since(WorkState state) {
        return state.hired().map(day -> " since " + Words.day(day)).orElse("")
                + state.lastDay().map(day -> ", last day " + Words.day(day)).orElse("");
    }

    /** The whole state as one sentence, which a section opens with. */
    public static String state(WorkState state) {
        if (!state.standing().isEmployed()) {
            return standing(state) + ".";
        }
        return standing(state)
                + state.enrolledSince()
                        .map(day -> "; enrolled since " + Words.day(day))
                        .orElse("; not enrolled")
                + (state.engagement().recordedHere()
                        ? "; cases go on this employer's log."
                        : "; cases go on the log of " + state.engagement().employer() + ".");
    }

    /** Why an event does not fit, as a sentence. */
    public static String inconsistency(Inconsistency.Kind kind) {
        return switch (kind) {
            case LEFT_BEFORE_HIRED -> "This is the end of an employment, before the first day of any.";
            case BEFORE_HIRED -> "This is before the first day of employment.";
            case HIRED_WHILE_EMPLOYED ->
                "The worker is employed already on this day: the end of the earlier employment is missing.";
            case LEFT_ALREADY -> "The employment has ended already, or its last day is on record.";
            case AFTER_LEAVING -> "This is after the last day of employment, and before the worker is hired again.";
            case ENROLLED_ALREADY -> "The worker is enrolled already on this day.";
            case NOT_ENROLLED -> "The worker is not enrolled on this day.";
            case ON_LEAVE_ALREADY -> "The worker is on leave already on this day.";
            case LEAVE_ENDS_BEFORE_IT_BEGINS -> "The last day of the leave is before its first.";
            case NOT_ON_LEAVE -> "The worker is not on leave on this day.";
            case MOVED_NOWHERE -> "The worker works there already on this day.";
        };
    }

    /** {@code On leave from 3 Feb 2026 to 2 May 2026}, for the list of times away. */
    public static String absence(Absence absence) {
        String kind = switch (absence.kind()) {
            case LEAVE -> "On leave";
            case BETWEEN_EMPLOYMENTS -> "Not employed";
            case NOT_ENROLLED -> "Not enrolled";
        };
        return absence.firstDayBack()
                .map(back -> kind + " from " + Words.day(absence.from()) + " to " + Words.day(back.minusDays(1)))
                .orElse(kind + " from " + Words.day(absence.from()) + " on");
    }

    /**
     * What the events up to a day mean for baseline, due dates and records; of a last day also when it lies ahead.
     *
     * @param ruleSet what the worker's site answers to
     * @param hasTest whether a hearing test is on record
     */
    public static List<Sentence> consequences(WorkingLife life, LocalDate asOf, RuleSet ruleSet, boolean hasTest) {
        WorkState state = life.on(asOf);
        boolean mine = ruleSet.word().equals(MINES);
        List<Sentence> all = new ArrayList<>();
        afterStanding(state, mine, all);
        if (state.standing().isEmployed()) {
            life.asEnteredOn(asOf).lastDay().ifPresent(last -> afterStanding(life.on(last.plusDays(1)), mine, all));
        }
        life.absences(asOf).forEach(absence -> afterAbsence(absence, asOf, mine, all));
        life.latest(WorkEvent.TakenOver.class, asOf)
                .ifPresent(event -> all.add(Sentence.of(
                        "Came with a bought plant: the old baselines are taken over and go on; new ones may not be set.",
                        baselinesOnChangeOfOwner(mine))));
        if (state.standing().isEmployed()) {
            enrolment(state, ruleSet, hasTest, all);
            moves(life, asOf, all);
            whoRecords(state.engagement(), all);
        }
        return List.copyOf(all);
    }

    private static void afterStanding(WorkState state, boolean mine, List<Sentence> all) {
        switch (state.standing()) {
            case Standing.NotYetEmployed none -> {}
            case Standing.Employed employed -> {}
            case Standing.OnLeave leave -> {
                all.add(Sentence.plain(
                        "No paragraph that was looked up says that a due date waits for the end of a leave:"
                                + " each stands as it is."));
                all.add(Sentence.of(
                        "A test that falls due during the leave is made soon after the return.", COMMON_PRACTICE));
            }
            case Standing.HasLeft left -> {
                all.add(Sentence.of(
                        "No annual test is owed after the last day: it is owed to each employee at or above the action"
                                + " level.",
                        ANNUAL));
                all.add(Sentence.of("A test at the end is not asked for by 29 CFR 1910.95.", EXIT_TEST));
                retention(mine, all);
            }
            case Standing.WithSuccessor(var lastDay, var successor) -> {
                all.add(Sentence.of(
                        "The audiometric records go to " + successor + ", which keeps them for the rest of the time.",
                        TO_SUCCESSOR));
                all.add(Sentence.of(
                        "Medical and exposure records are transferred to the successor employer.",
                        new Citation("29 CFR 1910.1020(h), from memory")));
                all.add(Sentence.of(
                        "The injury log goes to " + successor + " too, which keeps it and need not update it.",
                        new Citation("29 CFR 1904.34")));
                all.add(Sentence.of(
                        successor + " takes over the baselines and may not set new ones.",
                        baselinesOnChangeOfOwner(mine)));
            }
        }
    }

    private static Citation baselinesOnChangeOfOwner(boolean mine) {
        return mine
                ? new Citation("30 CFR 62.190")
                : new Citation("OSHA letters, 27 April 2004 and 5 December 2008 (read in part)");
    }

    private static void retention(boolean mine, List<Sentence> all) {
        if (mine) {
            all.add(Sentence.of(
                    "The audiometric record is kept for at least six months after the last day.",
                    new Citation("30 CFR 62.171(c)")));
        } else {
            all.add(Sentence.of(
                    "Audiometric tests are kept for the duration of employment, exposure measurements for two years; this"
                            + " register removes nothing.",
                    new Citation("29 CFR 1910.95(m)(3)")));
        }
        all.add(Sentence.of(
                "Entries on the injury log are kept for five years after the end of their year.",
                new Citation("29 CFR 1904.33(a)")));
    }

    private static void afterAbsence(Absence absence, LocalDate asOf, boolean mine, List<Sentence> all) {
        Optional<LocalDate> back = absence.firstDayBack();
        switch (absence.kind()) {
            case LEAVE -> {}
            case BETWEEN_EMPLOYMENTS -> {
                String rehired = back.map(day -> "Hired again on " + Words.day(day) + ": ")
                        .orElse("");
                all.add(Sentence.of(
                        rehired
                                + "the first baseline may go on while it is kept, without a limit of time; otherwise the"
                                + " first valid audiogram after the rehire is the baseline.",
                        new Citation("OSHA letter, 8 February 2005 (read in part)")));
                all.add(Sentence.of(
                        "An archived letter made the audiogram after the rehire the baseline. This register goes on with"
                                + " the one on record until a decision chooses another.",
                        new Citation("OSHA letter, 22 January 1996, archived")));
                all.add(Sentence.plain(
                        "When a test is due after a rehire was not found in any text: the register counts"
                                + " from the last test on record, so that it may be overdue on the first day."));
            }
            case NOT_ENROLLED -> {
                if (back.isPresent()) {
                    all.add(Sentence.of(
                            "Back in the programme since "
                                    + Words.day(back.orElseThrow()) + ": no new baseline is taken; that would be a"
                                    + " revision.",
                            new Citation("OSHA letter, 31 January 2011 (read in part)")));
                } else {
                    all.add(Sentence.of(
                            "The annual test is owed to those at or above the action level. Its due date stays on the"
                                    + " list until somebody settles it, since the exposure may change again.",
                            ANNUAL));
                }
            }
        }
        if (mine) {
            all.add(
                    absence.isMoreThanSixMonths(asOf) && absence.kind() != Absence.Kind.NOT_ENROLLED
                            ? Sentence.of(
                                    absence(absence) + ", more than six consecutive months away from the mine: a new"
                                            + " baseline may be taken.",
                                    AWAY_FROM_MINE)
                            : Sentence.of(
                                    absence(absence) + ": no new baseline. A change of enrolment makes none, nor do six"
                                            + " months or less away from the mine.",
                                    AWAY_FROM_MINE));
        }
    }

    private static void enrolment(WorkState state, RuleSet ruleSet, boolean hasTest, List<Sentence> all) {
        if (hasTest) {
            return;
        }
        state.firstEnrolled()
                .ifPresentOrElse(
                        from -> all.add(Sentence.of(
                                "Enrolled from " + Words.day(from) + " and not tested yet: the baseline test is due"
                                        + " within "
                                        + Words.deadline(ruleSet.tests().baseline())
                                        + ", by "
                                        + Words.day(ruleSet.tests().baselineBy(from, Holidays.NONE))
                                        + ", holidays not counted.",
                                ruleSet.paragraph(Step.BASELINE))),
                        () -> all.add(Sentence.plain(
                                "No day of enrolment is on record, so that no date for a baseline test can be set.")));
    }

    private static void moves(WorkingLife life, LocalDate asOf, List<Sentence> all) {
        life.latest(WorkEvent.Moved.class, asOf).ifPresent(move -> {
            all.add(Sentence.of(
                    "Nothing that was looked up gives a new baseline to someone who moves within the same employer; the"
                            + " baseline goes on.",
                    COMMON_PRACTICE));
            Placement to = ((WorkEvent.Moved) move.event()).to();
            String before = life.on(move.day().minusDays(1)).place().site();
            if (!before.equals(to.site())) {
                all.add(movedSite(before, to.site(), move.day()));
            }
        });
    }

    /** Who sees the record after a move to another site. */
    public static Sentence movedSite(String from, String to, LocalDate day) {
        return Sentence.plain("Since " + Words.day(day) + " the whole record is open to those of "
                + (to.isEmpty() ? "no single site" : to) + ", earlier tests included; those of "
                + (from.isEmpty() ? "all sites" : from) + (from.isEmpty() ? " still see it." : " see it no more."));
    }

    private static void whoRecords(Engagement engagement, List<Sentence> all) {
        if (engagement.kind() == Engagement.Kind.OWN) {
            return;
        }
        all.add(Sentence.of(
                engagement.recordedHere()
                        ? "Supervised here from day to day: a recordable case goes on this employer's log, once, and not on"
                                + " that of " + engagement.employer() + "."
                        : engagement.employer()
                                + " supervises from day to day and records a case, once; it does not go on"
                                + " this employer's log.",
                Engagement.BASIS));
        all.add(Sentence.plain("Who offers the hearing tests is not in these paragraphs, which are about the log alone:"
                + " agree on it in writing (common practice)."));
    }
}
