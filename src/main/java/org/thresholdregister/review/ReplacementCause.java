package org.thresholdregister.review;

/** By what a determination was replaced. */
public enum ReplacementCause {
    DECISION,
    IMPORT,
    TEST,
    SUPERSEDING,
    CALENDAR,
    WORKING_LIFE,
    OTHER;

    static ReplacementCause of(JudgingCause cause) {
        return switch (cause) {
            case JudgingCause.ByDecision decision -> DECISION;
            case JudgingCause.ByImport batch -> IMPORT;
            case JudgingCause.ByTest test -> TEST;
            case JudgingCause.BySuperseding superseding -> SUPERSEDING;
            case JudgingCause.ByCalendar calendar -> CALENDAR;
            case JudgingCause.ByWorkingLife life -> WORKING_LIFE;
            case JudgingCause.ByOther other -> OTHER;
        };
    }
}
