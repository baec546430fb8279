package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryRow;

class SummaryWordsTest {

    private static List<SummaryRow> year(int tested, int found, int confirmed, int recordable, String... sites) {
        List<SummaryRow> rows = new ArrayList<>(List.of(
                total(Measure.WORKERS_TESTED, tested),
                total(Measure.SHIFTS_FOUND, found),
                total(Measure.SHIFTS_CONFIRMED, confirmed),
                total(Measure.RECORDABLE_CASES, recordable)));
        for (String site : sites) {
            Group whole = new Group(site, Group.ALL);
            rows.add(new SummaryRow(2026, whole, Measure.WORKERS_TESTED, Count.hidden()));
            rows.add(new SummaryRow(2026, new Group(site, "Saws"), Measure.WORKERS_TESTED, Count.of(7)));
        }
        return rows;
    }

    private static SummaryRow total(Measure measure, int count) {
        return new SummaryRow(2026, Group.EVERYBODY, measure, Count.of(count));
    }

    @Test
    void theYearIsASentence() {
        assertThat(SummaryWords.sentence(2026, year(1371, 14, 9, 4, "Mill", "Yard", Group.NONE)))
                .isEqualTo("In 2026, 1,371 workers were tested at 2 sites; 14 shifts were found, 9 confirmed;"
                        + " 4 cases are recordable.");
    }

    @Test
    void oneAndNoneAreWords() {
        assertThat(SummaryWords.sentence(2026, year(1, 1, 0, 1, "Mill")))
                .isEqualTo("In 2026, 1 worker was tested at 1 site; 1 shift was found, none confirmed;"
                        + " 1 case is recordable.");
        assertThat(SummaryWords.sentence(2026, year(8, 0, 0, 0, Group.NONE)))
                .isEqualTo("In 2026, 8 workers were tested; no shift was found; no case is recordable.");
    }

    @Test
    void aHiddenTotalIsSaidToBeHidden() {
        List<SummaryRow> hidden =
                List.of(new SummaryRow(2026, Group.EVERYBODY, Measure.WORKERS_TESTED, Count.hidden()));

        assertThat(SummaryWords.sentence(2026, hidden))
                .isEqualTo("In 2026, fewer than 5 workers were tested, and groups as small as that are not shown.");
        assertThat(SummaryWords.sentence(2026, List.of())).isEqualTo("In 2026, no worker was tested.");
    }

    @Test
    void thePhrasesThatCountSayWhat() {
        assertThat(SummaryWords.phrases(2026, year(371, 14, 9, 4, "Mill")))
                .filteredOn(phrase -> phrase.tells().isPresent())
                .extracting(SummaryWords.Phrase::text)
                .containsExactly("371 workers", "14 shifts", "9 confirmed", "4 cases");
    }

    @Test
    void theSitesInViewAreNamed() {
        assertThat(SummaryWords.onlySites(Set.of("Yard"))).isEqualTo("The totals are of Yard, the only site in view.");
        assertThat(SummaryWords.onlySites(Set.of("Yard", "Mill")))
                .isEqualTo("The totals are of Mill, Yard, the only sites in view.");
        assertThat(SummaryWords.onlySites(Set.of())).isEqualTo("No site is in view, so that nothing is counted.");
    }
}
