package org.thresholdregister.reports.ui;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.wording.SummaryWords;
import org.thresholdregister.platform.ui.LeadSentence;

/** The year in a sentence; its numbers lead to the shifts where the reader may see these. */
class SummaryLead extends LeadSentence {

    SummaryLead(int year, List<SummaryRow> rows, boolean withLinks) {
        for (SummaryWords.Phrase phrase : SummaryWords.phrases(year, rows)) {
            Optional<String> path =
                    withLinks ? phrase.tells().flatMap(measure -> path(year, measure)) : Optional.empty();
            path.ifPresentOrElse(leadsTo -> link(phrase.text(), leadsTo), () -> text(phrase.text()));
        }
    }

    private static Optional<String> path(int year, Measure measure) {
        String shifts = "shifts?year=" + year;
        return switch (measure) {
            case SHIFTS_FOUND -> Optional.of(shifts);
            case SHIFTS_CONFIRMED -> Optional.of(shifts + "&outcome=confirmed");
            case RECORDABLE_CASES -> Optional.of(shifts + "&recordable=yes");
            case WORKERS_TESTED, ANNUAL_TESTS, SHIFTS_NOT_CONFIRMED, SHIFTS_AWAITING_RETEST, UNDECIDED_TESTS ->
                Optional.empty();
        };
    }
}
