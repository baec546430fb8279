package org.thresholdregister.intake.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.thresholdregister.intake.ImportCounts;

class ImportWordsTest {

    @Test
    void theOutlookCountsWhatCanBeStoredAndWhatIsLeftOut() {
        assertThat(ImportWords.outlook(new ImportCounts(412, 0, 0, 3806, 0, 0, 0, 3)))
                .isEqualTo("412 workers and 3,806 tests can be stored; 3 rows are left out.");
        assertThat(ImportWords.outlook(new ImportCounts(5, 2, 9, 0, 0, 1, 0, 0)))
                .isEqualTo("5 new and 2 changed workers and 1 decision can be stored; no row is left out.");
        assertThat(ImportWords.outlook(new ImportCounts(0, 1, 0, 1, 4, 2, 0, 1)))
                .isEqualTo("1 changed worker, 1 test and 2 decisions can be stored; 1 row is left out.");
    }

    @Test
    void nothingNewIsSaidAsSuch() {
        assertThat(ImportWords.outlook(new ImportCounts(0, 0, 412, 0, 3806, 0, 0, 3)))
                .isEqualTo("Nothing new: all that could be stored is in the register already; 3 rows are left out.");
        assertThat(ImportWords.outlook(new ImportCounts(0, 0, 0, 0, 0, 0, 0, 2)))
                .isEqualTo("Nothing can be stored; 2 rows are left out.");
        assertThat(ImportWords.outlook(new ImportCounts(0, 0, 0, 0, 0, 0, 0, 0)))
                .isEqualTo("Nothing new: the files hold no rows; no row is left out.");
    }

    @Test
    void whatWasStoredIsToldInTheEnd() {
        assertThat(ImportWords.stored(new ImportCounts(412, 0, 0, 3806, 0, 0, 0, 3)))
                .isEqualTo("412 workers and 3,806 tests are stored; 3 rows were left out.");
        assertThat(ImportWords.stored(new ImportCounts(0, 0, 0, 1, 0, 0, 0, 0)))
                .isEqualTo("1 test is stored; no row was left out.");
        assertThat(ImportWords.stored(new ImportCounts(0, 0, 2, 0, 0, 0, 0, 0)))
                .isEqualTo("Nothing new was stored; no row was left out.");
    }

    @Test
    void howFarAndHowLongAreWords() {
        assertThat(ImportWords.howFar(500, 2911)).isEqualTo("500 of 2,911");
        assertThat(ImportWords.howFar(0, 0)).isEmpty();
        assertThat(ImportWords.howLong(Duration.ofMillis(1200))).isEqualTo("1 second");
        assertThat(ImportWords.howLong(Duration.ofSeconds(65))).isEqualTo("1 minute 5 seconds");
    }
}
