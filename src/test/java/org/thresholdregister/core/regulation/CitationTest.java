package org.thresholdregister.core.regulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CitationTest {

    @ParameterizedTest
    @ValueSource(strings = {"", " "})
    void aCitationNamesAPlace(String place) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Citation(place));
    }

    @Test
    void itIsShownAsThePlace() {
        assertThat(new Citation("29 CFR 1904.10(a)"))
                .hasToString("29 CFR 1904.10(a)")
                .extracting(Citation::place)
                .isEqualTo("29 CFR 1904.10(a)");
    }
}
