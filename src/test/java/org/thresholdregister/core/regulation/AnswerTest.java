package org.thresholdregister.core.regulation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnswerTest {

    @ParameterizedTest
    @CsvSource({
        "YES, YES, YES, YES",
        "YES, NO, NO, YES",
        "YES, UNDECIDED, UNDECIDED, YES",
        "NO, NO, NO, NO",
        "NO, UNDECIDED, NO, UNDECIDED",
        "UNDECIDED, UNDECIDED, UNDECIDED, UNDECIDED"
    })
    void undecidedGivesWayOnlyToWhatSettlesTheAnswer(Answer one, Answer other, Answer both, Answer either) {
        assertThat(one.and(other)).isEqualTo(both);
        assertThat(other.and(one)).isEqualTo(both);
        assertThat(one.or(other)).isEqualTo(either);
        assertThat(other.or(one)).isEqualTo(either);
        assertThat(one.not().or(other.not())).isEqualTo(both.not());
    }
}
