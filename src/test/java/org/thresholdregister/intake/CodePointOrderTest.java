package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CodePointOrderTest {

    @Test
    void theOrderIsThatOfTheCodePoints() {
        int[] points = {'a', 'b', 0xE9, 0xD7FF, 0xE000, 0xFFFD, 0x10000, 0x1F514, 0x10FFFF};
        Random random = new Random(3);
        for (int round = 0; round < 20_000; round++) {
            int[] one = random.ints(random.nextInt(4), 0, points.length)
                    .map(i -> points[i])
                    .toArray();
            int[] other = random.ints(random.nextInt(4), 0, points.length)
                    .map(i -> points[i])
                    .toArray();
            int byPoints = Arrays.compare(one, other);
            int byOrder = CodePointOrder.COMPARATOR.compare(
                    new String(one, 0, one.length), new String(other, 0, other.length));
            assertThat(Integer.signum(byOrder)).isEqualTo(Integer.signum(byPoints));
        }
    }
}
