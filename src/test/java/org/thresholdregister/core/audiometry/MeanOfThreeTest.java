package org.thresholdregister.core.audiometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

class MeanOfThreeTest {

    @Test
    void everyMeanHasTwoDecimalsRoundedHalfUp() {
        for (int sum = -600; sum <= 600; sum++) {
            assertThat(MeanOfThree.ofSum(sum))
                    .as("sum %d", sum)
                    .isEqualTo(BigDecimal.valueOf(sum)
                            .divide(BigDecimal.valueOf(3), 2, RoundingMode.HALF_UP)
                            .toPlainString());
        }
    }
}
